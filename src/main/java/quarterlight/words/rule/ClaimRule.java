package quarterlight.words.rule;

import static quarterlight.language.Sentences.say;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import quarterlight.car.ZoneId;
import quarterlight.words.DraftKind;
import quarterlight.words.Facet;
import quarterlight.words.clause.DraftBuilder;
import quarterlight.words.clause.Meaning;
import quarterlight.words.clause.Moment;
import quarterlight.words.clause.Rule;
import quarterlight.words.lexicon.Mention;
import quarterlight.words.lexicon.TermKind;
import quarterlight.words.place.PlaceSource;
import quarterlight.words.text.Clause;
import quarterlight.words.text.WordSet;

/** What a seller, an owner or a paper says. */
final class ClaimRule implements Rule {
    private static final Set<String> EVENTS = WordSet.of(
            "backed hit fixed repaired painted replaced changed swapped welded rebuilt clipped scraped recovered"
                    + " redone resprayed into");

    /** "... he says": so few words only tell who said what stands before them. */
    private static final int ATTRIBUTION = 3;
    /** "..., in 2009, original color": so few words go on with the claim before them. */
    private static final int REST = 4;

    private static final double GOES_ON_S = 2;
    /** So many clauses back at most. */
    private static final int FAR = 8;

    @Override
    public void read(Moment moment, List<DraftBuilder> found) {
        Clause clause = moment.clause();
        Optional<Mention> said = clause.first(TermKind.CLAIM);
        Optional<Moment> before = moment.earlier().stream().findFirst();
        if (said.isPresent() && clause.size() <= ATTRIBUTION && before.isPresent() && closes(moment)) {
            found.add(claim(before.get(), said.get().value())
                    .through(List.of(moment))
                    .because(Meaning.quote(
                            clause.shown(),
                            say("draft.said-by", Meaning.said(said.get().value()))))
                    .feature("claim-said"));
        } else if (said.isPresent()) {
            found.add(claim(moment, said.get().value())
                    .from(
                            said.get(),
                            say("draft.said-by", Meaning.said(said.get().value())))
                    .feature("claim-said"));
        } else if (clause.told() && clause.size() >= 2) {
            found.add(
                    claim(moment, "seller").because(say("draft.another-voice")).feature("claim-told"));
        } else {
            Optional<DraftBuilder> claimed = last(moment, found);
            if (claimed.isPresent() && clause.size() <= REST && !moment.has(TermKind.PART) && !sweeping(moment)) {
                claimed.get().through(List.of(moment));
                claimed.get().with(Facet.TEXT, claimed.get().words);
                return;
            }
            moment.earlier().stream()
                    .limit(2)
                    .filter(m -> m.has(TermKind.CLAIM))
                    .findFirst()
                    .ifPresent(m -> found.add(claim(
                                    moment,
                                    m.clause()
                                            .first(TermKind.CLAIM)
                                            .orElseThrow()
                                            .value())
                            .because(say("draft.goes-on"))
                            .feature("claim-goes-on")));
        }
    }

    /** "..., never hit, no rust": a claim of its own. */
    private static boolean sweeping(Moment moment) {
        return moment.has(TermKind.SWEEPING);
    }

    /** Nothing more of its sentence follows. */
    private static boolean closes(Moment moment) {
        int next = moment.index() + 1;
        return next >= moment.all().size()
                || moment.all().get(next).clause().sentence() != moment.clause().sentence();
    }

    /** What was claimed up to the clause before, in the same sentence. */
    private static Optional<DraftBuilder> last(Moment moment, List<DraftBuilder> found) {
        return DraftBuilder.last(found, DraftKind.CLAIM, moment.index() - FAR)
                .filter(f -> moment.earlier().stream().anyMatch(m -> m.index() == f.index))
                .filter(f -> moment.clause().at() - f.until < GOES_ON_S);
    }

    private static DraftBuilder claim(Moment moment, String by) {
        Clause clause = moment.clause();
        DraftBuilder finding = new DraftBuilder(DraftKind.CLAIM, moment)
                .with(Facet.SAID_BY, by)
                .with(Facet.TEXT, clause.shown())
                .feature("claim-by-" + by)
                .feature("claim-with-number", clause.tokens().stream().anyMatch(t -> t.isNumber()))
                .feature("claim-short", clause.size() <= 4);
        if (by.equals("papers")) {
            return finding.zones(List.of(new ZoneId("identity-papers"))).feature("claim-papers");
        }
        boolean it = clause.told() || clause.tokens().stream().anyMatch(t -> EVENTS.contains(t.word()));
        boolean named = moment.place().how() == PlaceSource.NAMED
                || it && moment.place().known();
        return named ? finding.feature("claim-place") : finding.zones(List.of()).feature("claim-car");
    }
}
