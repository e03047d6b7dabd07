package quarterlight.page.sheet;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import quarterlight.car.ZoneId;
import quarterlight.units.XmlText;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.mark.Mark;
import quarterlight.visit.mark.MarkKind;
import quarterlight.visit.pin.Recorded;

/**
 * The marks to read on a car: those for which the visit holds an expected text, then the usual ones and where they usually stand. The usual
 * ones are common practice without a published source; a maker may have put them elsewhere.
 */
final class MarkPlaces {
    /** So many lines a sheet has for marks. */
    static final int MAX_LINES = 15;

    private static final List<Usual> USUAL = List.of(
            new Usual("sheet.mark-places.vehicle-number", "sheet.mark-places.dash-door-opening-or-plate", "dash"),
            new Usual(
                    "sheet.mark-places.vehicle-number-second-place",
                    "sheet.mark-places.firewall-cowl-frame",
                    "firewall"),
            new Usual("sheet.mark-places.body-tag", "sheet.mark-places.firewall-cowl-or-radiator-support", "firewall"),
            new Usual(
                    "sheet.mark-places.build-label", "sheet.mark-places.driver-s-door-or-its", "door-jamb-front-left"),
            new Usual("sheet.mark-places.engine-number", "sheet.mark-places.pad-on-the-block", "engine"),
            new Usual(
                    "sheet.mark-places.engine-casting-and-its-date", "sheet.mark-places.side-or-rear-of-the", "engine"),
            new Usual("sheet.mark-places.cylinder-head-casting-date", "sheet.mark-places.on-the-head", "engine"),
            new Usual(
                    "sheet.mark-places.carburetor-or-injection-tag",
                    "sheet.mark-places.cover-or-flange",
                    "intake-fuel"),
            new Usual(
                    "sheet.mark-places.alternator-distributor",
                    "sheet.mark-places.stamp-on-the-housing",
                    "ignition-charging"),
            new Usual(
                    "sheet.mark-places.transmission-number-date", "sheet.mark-places.side-of-the-case", "transmission"),
            new Usual("sheet.mark-places.axle-code-and-date", "sheet.mark-places.tube-housing-or-tag", "rear-axle"),
            new Usual("sheet.mark-places.glass-each-pane", "sheet.mark-places.corner-of-the-pane", "windshield"),
            new Usual(
                    "sheet.mark-places.tires-last-four-digits",
                    "sheet.mark-places.side-wall-spare-too",
                    "wheel-front-left"),
            new Usual("sheet.mark-places.belt-labels", "sheet.mark-places.sewn-on-near-the-anchor", "seat-front-left"),
            new Usual(
                    "sheet.mark-places.numbers-on-the-papers",
                    "sheet.mark-places.title-build-sheet-invoice",
                    "identity-papers"));

    /** So many of the usual lines, from the first on, ask for the number of the car. */
    private static final int CAR_NUMBERS = 2;

    private MarkPlaces() {}

    private record Usual(String part, String where, String zone) {}

    /**
     * A line of the sheet.
     *
     * @param where it usually stands, or the zone the visit names
     * @param expected what it should say; empty if nothing is expected
     */
    public record Line(String part, String where, String expected) {}

    /** @param labels names of the zones that the car has */
    static List<Line> of(VisitRecord visit, Map<ZoneId, String> labels) {
        Map<String, Line> lines = new LinkedHashMap<>();
        for (Recorded<Mark> row : visit.marks()) {
            Mark mark = row.value();
            if (mark.expected().isPresent()) {
                lines.putIfAbsent(
                        key(mark.part()),
                        new Line(
                                XmlText.clean(mark.part()),
                                mark.zone()
                                        .flatMap(zone -> Optional.ofNullable(labels.get(zone)))
                                        .orElse(say("sheet.mark-places.place-not-noted")),
                                XmlText.clean(mark.expected().get())));
            }
        }
        Set<ZoneId> there = labels.keySet();
        for (Usual usual : USUAL.subList(Math.min(CAR_NUMBERS, numbersOfTheCar(visit)), USUAL.size())) {
            if (there.contains(new ZoneId(usual.zone()))) {
                lines.putIfAbsent(key(say(usual.part())), new Line(say(usual.part()), say(usual.where()), ""));
            }
        }
        List<Line> all = new ArrayList<>(lines.values());
        return List.copyOf(all.subList(0, Math.min(MAX_LINES, all.size())));
    }

    /** How many parts are named that should bear the car's number; each takes the place of a usual line for one. */
    private static int numbersOfTheCar(VisitRecord visit) {
        List<Mark> expected = visit.marks().stream()
                .map(Recorded::value)
                .filter(mark -> mark.expected().isPresent() && mark.kind() != MarkKind.PAPER)
                .toList();
        Set<String> numbers = expected.stream()
                .filter(mark -> mark.kind() == MarkKind.VIN)
                .map(mark -> mark.expected().get())
                .collect(Collectors.toSet());
        return (int) expected.stream()
                .filter(mark -> numbers.contains(mark.expected().get()))
                .map(mark -> key(mark.part()))
                .distinct()
                .count();
    }

    private static String key(String part) {
        return part.strip().toLowerCase(Locale.ROOT);
    }
}
