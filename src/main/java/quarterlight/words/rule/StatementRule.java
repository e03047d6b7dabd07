package quarterlight.words.rule;

import static quarterlight.language.Sentences.say;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import quarterlight.words.DraftKind;
import quarterlight.words.Facet;
import quarterlight.words.clause.DraftBuilder;
import quarterlight.words.clause.Meaning;
import quarterlight.words.clause.Moment;
import quarterlight.words.clause.Negation;
import quarterlight.words.clause.Rule;
import quarterlight.words.lexicon.Mention;
import quarterlight.words.lexicon.TermKind;
import quarterlight.words.text.Clause;
import quarterlight.words.text.WordSet;

/** What a part is and how it is: origin and condition, also by what is denied. */
final class StatementRule implements Rule {
    private static final Map<String, String> FAMILY = new HashMap<>();
    /** What it means that a condition is denied. */
    private static final Map<String, String> DENIED = new HashMap<>();

    static {
        for (String rust : List.of("no rust", "surface rust", "scale", "pitted", "rusted through")) {
            FAMILY.put(rust, "rust");
            DENIED.put(rust, "no rust");
        }
        for (String harm : List.of("damaged", "leaking", "noise", "smell", "blocked", "worn")) {
            DENIED.put(harm, "sound");
        }
        for (String repair : List.of("repaired", "filler", "refinished", "added coating")) {
            FAMILY.put(repair, "repair");
            DENIED.put(repair, "as built");
        }
        DENIED.put("no rust", "pitted");
        DENIED.put("sound", "damaged");
        DENIED.put("missing", "present");
    }

    private static final int ANSWER = 5;
    /** So many clauses back at most. */
    private static final int LATELY = 7;

    private static final Set<String> SPEAKER = WordSet.of("i i'm i've i'd we we've just");
    private static final Set<String> FELT = Set.of("damaged", "noise");
    private static final Set<String> RUST_FIRST = Set.of("rusted through", "scale", "surface rust", "no rust");
    private static final Set<String> MISSING_PARTS =
            WordSet.of("battery-tray bumper-front bumper-rear carpet door-glass door-panel driveshaft emblems-moldings"
                    + " exhaust-front exhaust-rear grille headlamp headliner ignition-charging intake-fuel jack-tools"
                    + " kick-panel mirror package-shelf radiator rear-glass seat-rear soft-top spare-wheel tail-lamp"
                    + " valance weatherstrips wheel ");

    @Override
    public void read(Moment moment, List<DraftBuilder> found) {
        Clause clause = moment.clause();
        Set<String> families = new HashSet<>();
        clause.all(TermKind.CONDITION)
                .sorted((a, b) -> rank(b) - rank(a))
                .forEach(m -> condition(moment, m, families, found));
        clause.all(TermKind.ORIGIN).limit(2).forEach(m -> origin(moment, m, families, found));
        absent(moment, found);
        elliptic(moment, found);
    }

    /** "The jack's here, the handle isn't"; "left one's rusty, right one, none": what a short answer says by what stands before it. */
    private static void elliptic(Moment moment, List<DraftBuilder> found) {
        Clause clause = moment.clause();
        String last = clause.word(clause.size() - 1);
        boolean not = last.equals("isn't")
                || last.equals("aren't")
                || last.equals("not") && Set.of("is", "are").contains(clause.word(clause.size() - 2));
        Optional<Moment> before = moment.earlier().stream().findFirst();
        boolean there = before.map(Moment::clause)
                .map(c -> c.word(c.size() - 1))
                .filter(Set.of("here", "there", "present")::contains)
                .isPresent();
        if (not && there && clause.size() <= ANSWER) {
            found.add(answer(moment, "missing", say("draft.there-before")));
        }
        boolean none = clause.size() <= 2 && Set.of("none", "nothing").contains(last);
        boolean rust = found.stream()
                .filter(f -> f.what == DraftKind.STATEMENT && f.index >= moment.index() - LATELY)
                .filter(f -> f.clause.source().equals(clause.source()))
                .filter(f -> FAMILY.getOrDefault(f.facet(Facet.CONDITION), "").equals("rust"))
                .anyMatch(
                        f -> f.place.part().name().equals(moment.place().part().name())
                                && !f.zones.equals(moment.place().zones()));
        if (none && rust) {
            found.add(answer(moment, "no rust", say("draft.rust-other-side")));
        }
    }

    private static DraftBuilder answer(Moment moment, String condition, String reason) {
        return new DraftBuilder(DraftKind.STATEMENT, moment)
                .with(Facet.CONDITION, condition)
                .with(Facet.PART, moment.place().part().name())
                .because(Meaning.quote(moment.clause().shown(), Meaning.said(condition) + ", " + reason))
                .feature("answer")
                .feature("condition-" + condition.replace(' ', '-'));
    }

    /** The graver word of a family goes first: "rust hole" is a hole. */
    private static int rank(Mention m) {
        return (RUST_FIRST.contains(m.value()) ? 2 : 0)
                + (m.length() > 1 ? 1 : 0)
                + (m.value().equals("filler") ? 1 : 0);
    }

    private static void condition(Moment moment, Mention m, Set<String> families, List<DraftBuilder> found) {
        Clause clause = moment.clause();
        if (partOfName(clause, m)) {
            return;
        }
        if (tried(clause, m)) {
            return;
        }
        boolean denied = Negation.of(clause, m) && !clause.word(m.from()).equals("no");
        String said = denied ? DENIED.getOrDefault(m.value(), m.value()) : m.value();
        String family = FAMILY.getOrDefault(said, said);
        if (!families.add(family)) {
            return;
        }
        DraftBuilder finding = new DraftBuilder(DraftKind.STATEMENT, moment)
                .from(m, denied ? say("draft.denied", Meaning.said(said)) : Meaning.said(said));
        if (said.equals("as built")) {
            finding.with(Facet.ORIGIN, "original");
        } else {
            finding.with(Facet.CONDITION, said);
        }
        features(finding, moment, m, "condition-" + said.replace(' ', '-'));
        finding.feature("denied", denied);
        found.add(finding);
    }

    /** "I poked the floor", "I'm tapping it": what the speaker does to see how it is. */
    private static boolean tried(Clause clause, Mention m) {
        return FELT.contains(m.value())
                && m.length() == 1
                && SPEAKER.contains(clause.word(m.from() - 1))
                && !clause.word(m.to()).equals("through");
    }

    private static void origin(Moment moment, Mention m, Set<String> families, List<DraftBuilder> found) {
        Clause clause = moment.clause();
        if (partOfName(clause, m) || !families.add("origin")) {
            return;
        }
        boolean denied = Negation.of(clause, m) && !clause.word(m.from()).equals("no");
        String said = !denied ? m.value() : m.value().equals("original") ? "replaced" : "original";
        DraftBuilder finding = new DraftBuilder(DraftKind.STATEMENT, moment)
                .from(m, denied ? say("draft.denied", Meaning.said(said)) : Meaning.said(said))
                .with(Facet.ORIGIN, said);
        features(finding, moment, m, "origin-" + said.replace(' ', '-'));
        finding.feature("denied", denied);
        found.add(finding);
    }

    /** "no radiator", "no spare": a part that is denied is missing. */
    private static void absent(Moment moment, List<DraftBuilder> found) {
        Clause clause = moment.clause();
        clause.all(TermKind.PART)
                .filter(part -> clause.word(part.from() - 1).equals("no"))
                .filter(part -> moment.place().known() && (clause.size() <= 6 || part.from() <= 2))
                .filter(part -> moment.place().zones().stream()
                        .anyMatch(zone -> MISSING_PARTS.stream().anyMatch(zone.value()::startsWith)))
                .limit(1)
                .forEach(part -> {
                    DraftBuilder finding = new DraftBuilder(DraftKind.STATEMENT, moment)
                            .from(part, say("draft.denied", Meaning.said("missing")))
                            .with(Facet.CONDITION, "missing");
                    features(finding, moment, part, "condition-missing");
                    found.add(finding.feature("part-denied"));
                });
    }

    private static void features(DraftBuilder finding, Moment moment, Mention m, String value) {
        Clause clause = moment.clause();
        finding.feature(value);
        finding.feature("cue-adjacent", near(clause, m));
        finding.feature("word-" + String.join("-", m.phrase().words()));
        finding.feature("with-other-condition", clause.all(TermKind.CONDITION).anyMatch(o -> !o.value()
                .equals(m.value())));
        finding.feature("with-sign", clause.has(TermKind.SIGN) || clause.has(TermKind.SIGNNO));
        finding.feature("with-subject", clause.has(TermKind.SUBJECT));
        finding.feature("with-item", clause.has(TermKind.ITEM));
        if (finding.place.known()) {
            finding.with(Facet.PART, finding.place.part().name());
        }
    }

    private static boolean near(Clause clause, Mention m) {
        return clause.all(TermKind.PART)
                .anyMatch(p ->
                        p.to() <= m.from() && m.from() - p.to() <= 3 || m.to() <= p.from() && p.from() - m.to() <= 2);
    }

    /** A word of the name of a part says nothing of it: "clean" does, "break" in "brake line" does not. */
    private static boolean partOfName(Clause clause, Mention m) {
        return clause.mentions().stream()
                .filter(other -> other.kind() == TermKind.PART
                        || other.kind() == TermKind.SIGN
                        || other.kind() == TermKind.SIGNNO
                        || other.kind() == TermKind.ORIGIN
                        || other.kind() == TermKind.CONDITION
                        || other.kind() == TermKind.NOTLOOKED
                        || other.kind() == TermKind.REGION
                        || other.kind() == TermKind.ITEM)
                .anyMatch(other -> other.overlaps(m)
                        && (other.length() > m.length()
                                || other.kind() == TermKind.PART && other.from() < m.from()
                                || other.kind() == TermKind.PART
                                        && other.length() > 1
                                        && other.length() == m.length()));
    }
}
