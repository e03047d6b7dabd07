package quarterlight.edit.spoken;

import static quarterlight.language.Sentences.say;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quarterlight.car.ZoneId;
import quarterlight.units.Worded;
import quarterlight.visit.reading.GaugeMoment;
import quarterlight.visit.trial.TrialNames;
import quarterlight.words.Draft;
import quarterlight.words.Facet;
import quarterlight.words.clause.Meaning;

/** What a draft says, in one line for lists. */
public final class DraftLine {
    private static final List<Facet> VALUES = List.of(
            Facet.ITEM, Facet.RESULT, Facet.ORIGIN, Facet.CONDITION, Facet.KIND, Facet.TEXT, Facet.SIGN, Facet.VALUE);

    private DraftLine() {}

    /** Its zones by id and its value: {@code hood fender-left: damaged, likely}; {@code whole car} where no zone is meant. */
    public static String of(Draft draft) {
        String zones = draft.zones().isEmpty()
                ? say("draft.whole-car")
                : draft.zones().stream().map(ZoneId::value).collect(Collectors.joining(" "));
        String value = value(draft);
        return value.isEmpty() ? zones : zones + ": " + value;
    }

    /** Its value alone. */
    public static String value(Draft draft) {
        return switch (draft.what()) {
            case CLAIM ->
                say("draft.by", Meaning.said(draft.facet(Facet.SAID_BY).orElse("other")));
            case NOT_LOOKED_AT -> "";
            case GAUGE ->
                draft.facet(Facet.KIND)
                        .map(on -> say(
                                on.equals("bare") ? "draft.check.bare" : "draft.check.shim",
                                moment(draft),
                                figure(draft, draft.facet(Facet.EXPECTED)),
                                figure(draft, draft.facet(Facet.VALUE))))
                        .orElseGet(() -> moment(draft));
            case THICKNESS ->
                draft.facet(Facet.VALUE)
                        .map(value -> value + " " + draft.facet(Facet.UNIT).orElse(""))
                        .orElse(say("draft.no-metal-or-over"));
            case SIGN ->
                draft.facet(Facet.SEEN).filter("no"::equals).isPresent()
                        ? say(
                                "draft.not-seen",
                                Meaning.said(draft.facet(Facet.SIGN).orElse("")))
                        : Meaning.said(draft.facet(Facet.SIGN).orElse(""));
            case ODOMETER -> draft.facet(Facet.VALUE).orElse("");
            default ->
                Stream.concat(VALUES.stream(), Stream.of(Facet.CERTAINTY))
                        .flatMap(facet -> draft.facet(facet).stream()
                                .filter(said -> !said.isBlank())
                                .map(said -> said(draft, facet, said)))
                        .collect(Collectors.joining(", "));
        };
    }

    private static String said(Draft draft, Facet facet, String said) {
        return switch (facet) {
            case VALUE -> figure(draft, Optional.of(said));
            case ITEM -> TrialNames.said(said);
            case RESULT, ORIGIN, CONDITION, KIND, SIGN, CERTAINTY -> Meaning.said(said);
            default -> said;
        };
    }

    /** When the gauge was checked. */
    private static String moment(Draft draft) {
        String said = draft.facet(Facet.TEXT).orElse("");
        return Worded.find(GaugeMoment.class, said).map(Worded::said).orElse(said);
    }

    private static String figure(Draft draft, Optional<String> figure) {
        return figure.orElse("") + draft.facet(Facet.UNIT).map(" "::concat).orElse("");
    }
}
