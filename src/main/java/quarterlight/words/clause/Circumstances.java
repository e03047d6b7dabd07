package quarterlight.words.clause;

import static quarterlight.language.Sentences.say;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import quarterlight.words.DraftKind;
import quarterlight.words.Facet;
import quarterlight.words.lexicon.Mention;
import quarterlight.words.lexicon.TermKind;
import quarterlight.words.place.CarZones;
import quarterlight.words.place.PlaceSource;
import quarterlight.words.text.Clause;
import quarterlight.words.text.WordSet;

/** The circumstances under which something was said, as features: how the place is known, what else stands in the clause and its sentence. */
public final class Circumstances {
    private static final Map<TermKind, String> HERE = new EnumMap<>(TermKind.class);

    static {
        HERE.put(TermKind.GENERAL, "general");
        HERE.put(TermKind.HYPO, "plan");
        HERE.put(TermKind.OTHER, "other-car");
        HERE.put(TermKind.NOISE, "chatter");
        HERE.put(TermKind.CLAIM, "claimed");
        HERE.put(TermKind.NOTLOOKED, "not-looked");
        HERE.put(TermKind.HEDGE, "hedged");
        HERE.put(TermKind.WITHDRAW, "withdrawing");
        HERE.put(TermKind.NOTTRIED, "not-tried");
        HERE.put(TermKind.GAUGECHECK, "gauge-check");
    }

    private static final int LONG_AGO = 6;
    private static final Set<String> LEADING =
            WordSet.of("and but so well uh um okay ok now then though yeah also because 'cause alright still");
    private static final Set<String> PRONOUNS =
            WordSet.of("it it's that that's this there there's they they're these those what's which");
    private static final Set<String> ARTICLES = WordSet.of("the a an its his her my some somebody's");

    private static final Set<String> PAST = Set.of("had", "did", "used", "went", "came", "made");

    private Circumstances() {}

    /** "off another car" is said of a part of this one: a longer phrase of what the part is goes before talk of another car. */
    private static boolean said(Clause clause, TermKind kind) {
        return clause.all(kind)
                .anyMatch(m -> kind != TermKind.OTHER
                        || Stream.concat(clause.all(TermKind.ORIGIN), clause.all(TermKind.CONDITION))
                                .noneMatch(o -> o.overlaps(m) && o.length() > m.length()));
    }

    /** How long ago the place was named, and how many parts stand in the clause that names it. */
    private static void carried(Moment moment, DraftBuilder finding) {
        if (finding.place.how() != PlaceSource.CARRIED) {
            long parts =
                    moment.all(TermKind.PART).mapToInt(Mention::from).distinct().count();
            finding.feature(parts <= 1 ? "parts-one" : parts == 2 ? "parts-two" : "parts-more");
            return;
        }
        int back = 0;
        int sentences = 0;
        Moment one = moment;
        while (one.index() > 0 && one.place().how() == PlaceSource.CARRIED && back < LONG_AGO) {
            Moment before = moment.all().get(one.index() - 1);
            sentences += before.clause().sentence() == one.clause().sentence() ? 0 : 1;
            one = before;
            back++;
        }
        finding.feature("carried-" + (back < LONG_AGO ? back : "long"));
        finding.feature("carried-sentences-" + Math.min(sentences, 3));
    }

    /** What the clause begins with: a pronoun that means the place at hand, a word that no list knows, or what is said of it. */
    private static void subject(Clause clause, DraftBuilder finding) {
        int i = 0;
        while (i < clause.size() && LEADING.contains(clause.word(i))) {
            i++;
        }
        int at = i;
        if (i == clause.size()) {
            return;
        }
        String word = clause.word(i);
        Optional<Mention> known =
                clause.mentions().stream().filter(m -> m.covers(at)).findFirst();
        finding.feature("subject-"
                + (PRONOUNS.contains(word)
                        ? "pronoun"
                        : ARTICLES.contains(word)
                                ? clause.mentions().stream().anyMatch(m -> m.covers(at + 1))
                                        ? "article-known"
                                        : "article-unknown"
                                : known.map(m -> m.kind().word()).orElse("unknown")));
    }

    /** @param all what was found in the same clause */
    public static void add(Moment moment, List<DraftBuilder> all, DraftBuilder finding, CarZones car) {
        Clause clause = moment.clause();
        finding.feature("zone-finished", finding.zones.stream().anyMatch(car::finished));
        finding.feature("place-" + finding.place.how().word());
        if (finding.place.known()) {
            finding.feature("side-" + finding.place.sideHow().word());
        }
        carried(moment, finding);
        subject(clause, finding);
        HERE.forEach((kind, name) -> finding.feature(name + "-here", said(clause, kind)));
        for (Moment earlier : moment.earlier()) {
            HERE.forEach((kind, name) -> finding.feature(name + "-before", said(earlier.clause(), kind)));
        }
        moment.before(2)
                .forEach(m -> HERE.forEach((kind, name) -> finding.feature(name + "-last", said(m.clause(), kind))));
        for (Moment later : moment.rest()) {
            finding.feature("plan-after", later.has(TermKind.HYPO));
            finding.feature("general-after", later.has(TermKind.GENERAL));
        }
        finding.feature("told", clause.told());
        finding.feature("size-"
                + (clause.size() <= 3
                        ? "short"
                        : clause.size() <= 7 ? "usual" : clause.size() <= 14 ? "long" : "very-long"));
        finding.feature(
                "first-person", clause.tokens().stream().limit(3).anyMatch(t -> t.is("i", "i'm", "i've", "i'd")));
        finding.feature("past", clause.tokens().stream().anyMatch(t -> PAST.contains(t.word())));
        finding.feature(
                "question",
                clause.tokens()
                        .get(0)
                        .is("is", "are", "do", "does", "did", "what", "where", "how", "who", "why", "when"));
        finding.feature("you", clause.tokens().stream().anyMatch(t -> t.is("you", "you're", "your")));
        finding.feature("they", clause.tokens().stream().anyMatch(t -> t.is("they", "them", "these", "those")));
        for (DraftKind kind : DraftKind.values()) {
            finding.feature("also-" + kind.word(), all.stream().anyMatch(f -> f != finding && f.what == kind));
        }
        if (clause.has(TermKind.HEDGE)) {
            finding.with(
                    Facet.CERTAINTY, clause.first(TermKind.HEDGE).orElseThrow().value());
        }
        if (clause.told() || clause.has(TermKind.CLAIM)) {
            finding.with(
                    Facet.SAID_BY,
                    clause.first(TermKind.CLAIM).map(m -> m.value()).orElse("seller"));
        }
        if (finding.place.known()) {
            finding.because(
                    finding.place.said().isEmpty()
                            ? say("draft.place", finding.place.how().said())
                            : say("draft.place.by", finding.place.how().said(), finding.place.said()));
        }
    }
}
