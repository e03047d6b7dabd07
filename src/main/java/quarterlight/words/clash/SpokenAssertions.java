package quarterlight.words.clash;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import quarterlight.car.ZoneId;
import quarterlight.units.Worded;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.Origin;
import quarterlight.words.Draft;
import quarterlight.words.Facet;
import quarterlight.words.Utterance;
import quarterlight.words.clash.Assertion.Said;
import quarterlight.words.clause.Heard;
import quarterlight.words.clause.Moment;
import quarterlight.words.clause.Negation;
import quarterlight.words.lexicon.Mention;
import quarterlight.words.lexicon.TermKind;
import quarterlight.words.place.PlaceSource;
import quarterlight.words.text.Clause;
import quarterlight.words.text.Token;
import quarterlight.words.text.WordSet;

/** What is asserted in words: by drafts, and by what is said of the whole car. Pure. */
final class SpokenAssertions {
    private static final String INSPECTOR = "inspector";
    private static final Set<String> WHOLE = WordSet.of(
            "all car coupe everything ever it's pickup sedan she truck vehicle wagon whole convertible nothing body");

    private SpokenAssertions() {}

    /** @param holds which drafts count */
    static List<Assertion> of(Heard walk, Predicate<Draft> holds) {
        List<Assertion> found = new ArrayList<>();
        for (Draft draft : walk.drafts()) {
            if (!draft.withdrawn() && holds.test(draft)) {
                String by = draft.facet(Facet.SAID_BY).orElse(INSPECTOR);
                said(draft)
                        .ifPresent(said ->
                                found.add(new Assertion(draft.zones(), said, Testimony.said(by, Utterance.of(draft)))));
            }
        }
        walk.moments().forEach(moment -> sweeping(moment, found));
        return found;
    }

    private static Optional<Said> said(Draft draft) {
        return switch (draft.what()) {
            case STATEMENT -> facets(draft).map(facets -> new Assertion.Stated(part(draft), facets));
            case SIGN ->
                draft.facet(Facet.SIGN)
                        .map(sign -> new Assertion.SignSeen(
                                sign,
                                draft.facet(Facet.SEEN).filter("no"::equals).isEmpty()));
            case TRIAL ->
                draft.facet(Facet.ITEM)
                        .flatMap(item -> draft.facet(Facet.RESULT).map(result -> new Assertion.Tried(item, result)));
            case MARK ->
                draft.facet(Facet.TEXT)
                        .map(text -> new Assertion.Marked(
                                part(draft), draft.facet(Facet.KIND).orElse(""), text));
            case ODOMETER ->
                draft.facet(Facet.VALUE)
                        .filter(figure -> figure.matches("\\d{1,9}(\\.\\d+)?"))
                        .map(figure -> new Assertion.Mileage(
                                Double.parseDouble(figure),
                                draft.facet(Facet.SAID_BY)
                                        .map(by -> by.equals("papers") ? "papers" : "told")
                                        .orElse("read")));
            case THICKNESS ->
                draft.facet(Facet.LOW_UM).flatMap(low -> draft.facet(Facet.HIGH_UM)
                        .map(high -> new Assertion.Measured(Double.parseDouble(low), Double.parseDouble(high))));
            case NOT_LOOKED_AT, CLAIM, GAUGE -> Optional.empty();
        };
    }

    private static String part(Draft draft) {
        return Assertion.part(draft.facet(Facet.PART).orElse(""), draft.zones());
    }

    private static Optional<Facets> facets(Draft draft) {
        Optional<Origin> origin = draft.facet(Facet.ORIGIN).flatMap(word -> Worded.find(Origin.class, word));
        Optional<Condition> condition =
                draft.facet(Facet.CONDITION).flatMap(word -> Worded.find(Condition.class, word));
        return origin.isEmpty() && condition.isEmpty() ? Optional.empty() : Optional.of(new Facets(origin, condition));
    }

    /** "The truck's never been painted", "hood's never been off": of the whole car unless the clause names a part. */
    private static void sweeping(Moment moment, List<Assertion> found) {
        Clause clause = moment.clause();
        String by = by(moment);
        boolean claimed = !by.equals(INSPECTOR);
        boolean general = clause.has(TermKind.GENERAL) && !claimed;
        if (clause.has(TermKind.HYPO) || clause.has(TermKind.OTHER) || general) {
            return;
        }
        clause.all(TermKind.SWEEPING)
                .filter(said -> !Negation.of(clause, said) && !asked(clause))
                .findFirst()
                .ifPresent(said -> found.add(new Assertion(
                        zones(moment, claimed),
                        new Assertion.Sweeping(said.value()),
                        Testimony.said(
                                by, new Utterance(clause.source(), clause.at(), clause.until(), clause.shown())))));
    }

    private static List<ZoneId> zones(Moment moment, boolean claimed) {
        if (moment.place().how() == PlaceSource.NAMED) {
            return moment.place().zones();
        }
        boolean whole =
                claimed || moment.clause().tokens().stream().map(Token::word).anyMatch(WHOLE::contains);
        return whole ? List.of() : moment.place().zones();
    }

    private static boolean asked(Clause clause) {
        boolean marked = clause.shown().endsWith("?");
        return marked || clause.tokens().get(0).is("is", "are", "was", "has", "have", "did", "does", "do");
    }

    /** The one who is quoted, also where the sentence goes on: "he says it's original, and everything works". */
    private static String by(Moment moment) {
        return Stream.concat(Stream.of(moment), moment.earlier().stream().limit(2))
                .flatMap(one -> one.all(TermKind.CLAIM))
                .findFirst()
                .map(Mention::value)
                .orElse(moment.clause().told() ? "seller" : INSPECTOR);
    }
}
