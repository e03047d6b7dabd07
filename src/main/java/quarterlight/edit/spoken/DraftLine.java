package quarterlight.edit.spoken;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quarterlight.car.ZoneId;
import quarterlight.words.Draft;
import quarterlight.words.Facet;

/** What a draft says, in one line for lists. */
public final class DraftLine {
    private static final List<Facet> VALUES = List.of(
            Facet.ITEM, Facet.RESULT, Facet.ORIGIN, Facet.CONDITION, Facet.KIND, Facet.TEXT, Facet.SIGN, Facet.VALUE);

    private DraftLine() {}

    /** Its zones by id and its value: {@code hood fender-left: damaged, likely}; {@code whole car} where no zone is meant. */
    public static String of(Draft draft) {
        String zones = draft.zones().isEmpty()
                ? "whole car"
                : draft.zones().stream().map(ZoneId::value).collect(Collectors.joining(" "));
        String value = value(draft);
        return value.isEmpty() ? zones : zones + ": " + value;
    }

    /** Its value alone. */
    public static String value(Draft draft) {
        return switch (draft.what()) {
            case CLAIM -> "by " + draft.facet(Facet.SAID_BY).orElse("other");
            case NOT_LOOKED_AT -> "";
            case GAUGE ->
                draft.facet(Facet.KIND)
                        .map(on -> draft.facet(Facet.TEXT).orElse("") + ", "
                                + (on.equals("bare")
                                        ? "bare metal"
                                        : "shim of " + figure(draft, draft.facet(Facet.EXPECTED)))
                                + " shown as " + figure(draft, draft.facet(Facet.VALUE)))
                        .orElse(draft.facet(Facet.TEXT).orElse(""));
            case THICKNESS ->
                draft.facet(Facet.VALUE)
                        .map(value -> value + " " + draft.facet(Facet.UNIT).orElse(""))
                        .orElse("no metal or over range");
            case SIGN ->
                draft.facet(Facet.SIGN).orElse("")
                        + (draft.facet(Facet.SEEN).filter("no"::equals).isPresent() ? ": not seen" : "");
            case ODOMETER -> draft.facet(Facet.VALUE).orElse("");
            default ->
                Stream.concat(VALUES.stream(), Stream.of(Facet.CERTAINTY))
                        .flatMap(facet -> draft.facet(facet).stream()
                                .filter(said -> !said.isBlank())
                                .map(said -> facet == Facet.VALUE ? figure(draft, Optional.of(said)) : said))
                        .collect(Collectors.joining(", "));
        };
    }

    private static String figure(Draft draft, Optional<String> figure) {
        return figure.orElse("") + draft.facet(Facet.UNIT).map(" "::concat).orElse("");
    }
}
