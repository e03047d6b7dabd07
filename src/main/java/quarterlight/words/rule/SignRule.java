package quarterlight.words.rule;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
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
import quarterlight.words.text.SpokenNumber;

/** Signs of refinishing, seen or looked for and not seen. */
final class SignRule implements Rule {
    private static final Set<String> MOSTLY_GOOD =
            Set.of("weak-magnet", "fastener-disturbed", "gap-out-of-line", "color-differs", "texture-differs");

    @Override
    public void read(Moment moment, List<DraftBuilder> found) {
        Clause clause = moment.clause();
        Set<String> named = new HashSet<>();
        clause.all(TermKind.SIGNNO).filter(m -> !outspoken(clause, m)).forEach(m -> {
            if (named.add(m.value())) {
                found.add(sign(moment, m, Negation.of(clause, m) && !selfDenied(clause, m))
                        .feature("sign-no-phrase"));
            }
        });
        clause.all(TermKind.SIGN).filter(m -> !within(clause, m)).forEach(m -> {
            if (named.add(m.value())) {
                found.add(sign(moment, m, !Negation.of(clause, m)));
            }
        });
        clause.all(TermKind.SUBJECT)
                .filter(m -> !named.contains(m.value()))
                .findFirst()
                .ifPresent(m -> subject(moment, m, found));
        same(moment, named, found);
    }

    /** "magnet won't stick" is the sign, although "magnet ... stick" would be its absence. */
    private static boolean outspoken(Clause clause, Mention m) {
        return clause.all(TermKind.SIGN)
                .anyMatch(o -> o.value().equals(m.value()) && o.overlaps(m) && o.length() >= m.length());
    }

    private static boolean selfDenied(Clause clause, Mention m) {
        return clause.all(TermKind.NEG).anyMatch(m::overlaps);
    }

    private static DraftBuilder sign(Moment moment, Mention m, boolean seen) {
        DraftBuilder finding = new DraftBuilder(DraftKind.SIGN, moment)
                .with(Facet.SIGN, m.value())
                .with(Facet.SEEN, seen ? "yes" : "no")
                .from(m, say(seen ? "draft.sign.seen" : "draft.sign.not-seen", Meaning.said(m.value())));
        return finding.feature("sign-" + m.value()).feature("sign-" + (seen ? "seen" : "absent"));
    }

    /** The phrase stands within a longer one that says the sign is not there, or names something else. */
    private static boolean within(Clause clause, Mention m) {
        return clause.mentions().stream()
                .filter(o -> o.kind() == TermKind.SIGNNO || o.kind() == TermKind.PART || o.kind() == TermKind.SIGN)
                .anyMatch(o -> o.overlaps(m) && o.length() > m.length());
    }

    /** "the gap ... tight on top, wide at the bottom": what is judged, then how it is, in this clause or the next. */
    private static void subject(Moment moment, Mention m, List<DraftBuilder> found) {
        List<Moment> rest = moment.rest();
        List<Moment> together = new ArrayList<>();
        together.add(moment);
        together.addAll(rest);
        Optional<Boolean> bad = Optional.empty();
        List<Moment> used = new ArrayList<>();
        for (Moment one : together) {
            Optional<Boolean> here = polarity(one.clause(), m.value());
            if (here.isPresent() && (bad.isEmpty() || here.get())) {
                bad = here;
                if (one.index() != moment.index()) {
                    used.add(one);
                }
            }
        }
        if (bad.isEmpty() && m.value().equals("gap-out-of-line")) {
            long figures = Stream.concat(together.stream(), joined(moment, together.size()))
                    .flatMap(one -> one.clause().tokens().stream())
                    .filter(t -> SpokenNumber.isNumberWord(t.word()))
                    .count();
            bad = figures >= 2 ? Optional.of(true) : bad;
        }
        if (bad.isEmpty()) {
            return;
        }
        boolean seen = bad.get();
        found.add(new DraftBuilder(DraftKind.SIGN, moment)
                .with(Facet.SIGN, m.value())
                .with(Facet.SEEN, seen ? "yes" : "no")
                .from(m, say(seen ? "draft.sign.fault" : "draft.sign.good", Meaning.said(m.value())))
                .through(used)
                .feature("sign-by-subject")
                .feature("sign-" + m.value())
                .feature("sign-" + (seen ? "seen" : "absent")));
    }

    /** "... and almost seven at the cowl": the next clause of the sentence, although it names another part. */
    private static Stream<Moment> joined(Moment moment, int after) {
        return moment.all().stream()
                .skip(moment.index() + (long) after)
                .limit(1)
                .filter(next -> next.clause().sentence() == moment.clause().sentence()
                        && next.clause().source().equals(moment.clause().source())
                        && next.clause().word(0).equals("and"));
    }

    private static Optional<Boolean> polarity(Clause clause, String sign) {
        boolean good = clause.all(TermKind.GOOD).anyMatch(m -> !Negation.of(clause, m))
                || clause.all(TermKind.CONDITION).anyMatch(m -> m.value().equals("sound") && !Negation.of(clause, m))
                || clause.all(TermKind.SAME).findAny().isPresent() && !clause.has(TermKind.NEG)
                || clause.all(TermKind.ORIGIN).anyMatch(m -> m.value().equals("original") && !Negation.of(clause, m));
        if (sign.equals("seam-not-as-built")) {
            return seam(clause);
        }
        boolean bad = clause.all(TermKind.BAD).anyMatch(m -> !m.value().isEmpty())
                || clause.all(TermKind.PARTIAL)
                        .anyMatch(m -> !Negation.of(clause, m)
                                && !clause.word(m.from()).equals("but"))
                || clause.all(TermKind.GOOD).anyMatch(m -> Negation.of(clause, m))
                || clause.all(TermKind.CONDITION)
                        .anyMatch(m ->
                                !m.value().equals("sound") && !m.value().equals("no rust") && !Negation.of(clause, m))
                || clause.all(TermKind.ORIGIN).anyMatch(m -> !m.value().equals("original") && !Negation.of(clause, m));
        if (!good && !bad) {
            return Optional.empty();
        }
        boolean forgiven = MOSTLY_GOOD.contains(sign)
                && good
                && clause.all(TermKind.CONDITION).noneMatch(m -> m.value().equals("damaged"));
        return Optional.of(bad && !forgiven);
    }

    /** Of a seam only what it is made of counts; that it leaks or rusts says nothing of how it was made. */
    private static Optional<Boolean> seam(Clause clause) {
        Optional<Boolean> origin = clause.all(TermKind.ORIGIN)
                .findFirst()
                .map(m -> m.value().equals("original") == Negation.of(clause, m));
        return origin.or(() -> clause.all(TermKind.CONDITION)
                .filter(m -> m.value().equals("repaired") || m.value().equals("filler"))
                .findFirst()
                .map(m -> !Negation.of(clause, m)));
    }

    /** "none on the front", "same on the other side": the sign spoken of just before, at another place. */
    private static void same(Moment moment, Set<String> named, List<DraftBuilder> found) {
        Clause clause = moment.clause();
        if (!named.isEmpty() || clause.size() > 7) {
            return;
        }
        boolean none = clause.word(0).equals("none")
                || clause.word(0).equals("nothing")
                || clause.word(1).equals("none");
        if (!none) {
            return;
        }
        moment.earlier().stream()
                .flatMap(e -> e.all(TermKind.SIGN))
                .findFirst()
                .ifPresent(m -> found.add(new DraftBuilder(DraftKind.SIGN, moment)
                        .with(Facet.SIGN, m.value())
                        .with(Facet.SEEN, "no")
                        .because(Meaning.quote("none", say("draft.sign.not-here", Meaning.said(m.value()))))
                        .feature("sign-carried")
                        .feature("sign-absent")));
    }
}
