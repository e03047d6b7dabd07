package quarterlight.thickness;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneId;
import quarterlight.thickness.statistics.MeanDifference;
import quarterlight.thickness.statistics.MeanInterval;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.pin.ViewPoint;
import quarterlight.visit.reading.Reading;

/**
 * Panels against their neighbors, level against upright ones, and steps within a panel by the place of its spots. Only
 * readable outer panels take part. Differences carry Welch's 95 % interval.
 *
 * @param neighbors each panel with two spots or more less all spots of the panels that meet it
 * @param horizontal spots of level panels (hood, roof, lids, cowl) less those of the others; empty below two of either
 * @param steps panels with a place for six spots or more in one view
 */
public record PanelAnalyses(
        List<CarThickness.Against> neighbors, Optional<MeanDifference> horizontal, List<Step> steps) {
    private static final List<String> LEVEL_PANELS =
            List.of("hood", "roof", "decklid", "front-lid", "engine-lid", "cowl");
    private static final List<String> SIDES = List.of("left", "right");
    /** Which outer panels meet; SIDE stands for left or right. */
    private static final Map<String, List<String>> MEETING = Map.of(
            "hood", List.of("fender-left", "fender-right", "cowl", "grille-panel"),
            "front-lid", List.of("fender-left", "fender-right", "cowl"),
            "fender-SIDE", List.of("hood", "front-lid", "door-front-SIDE", "valance-front", "cowl"),
            "door-front-SIDE",
                    List.of("fender-SIDE", "door-rear-SIDE", "quarter-SIDE", "cab-corner-SIDE", "rocker-SIDE"),
            "door-rear-SIDE", List.of("door-front-SIDE", "quarter-SIDE", "rocker-SIDE"),
            "quarter-SIDE",
                    List.of(
                            "door-front-SIDE",
                            "door-rear-SIDE",
                            "rocker-SIDE",
                            "sail-panel-SIDE",
                            "decklid",
                            "engine-lid",
                            "tail-panel"),
            "roof", List.of("a-pillar-left", "a-pillar-right", "sail-panel-left", "sail-panel-right"),
            "decklid", List.of("quarter-left", "quarter-right", "tail-panel"),
            "bed-side-SIDE", List.of("cab-corner-SIDE", "tailgate"),
            "rocker-SIDE", List.of("door-front-SIDE", "door-rear-SIDE", "fender-SIDE", "quarter-SIDE"));

    /** A step within a zone. */
    public record Step(ZoneId zone, PlaceStep found) {}

    public PanelAnalyses {
        neighbors = List.copyOf(neighbors);
        steps = List.copyOf(steps);
    }

    public static PanelAnalyses of(VisitRecord visit, ThicknessSurvey survey, ZoneCatalog catalog) {
        List<ZoneThickness> panels = survey.zones().stream()
                .filter(zone -> zone.readable() && zone.valueSpots() > 0)
                .filter(zone -> catalog.find(zone.zone()).map(Zone::finish).orElse(false))
                .toList();
        List<CarThickness.Against> neighbors = new ArrayList<>();
        for (ZoneThickness panel : panels) {
            List<String> meeting = meeting(panel.zone().value());
            double[] beside = spots(panels, zone -> meeting.contains(zone.value()));
            if (panel.valueSpots() > 1 && beside.length > 1) {
                neighbors.add(new CarThickness.Against(
                        panel.zone(), MeanDifference.of(panel.spotsUm(), beside, MeanInterval.LEVEL)));
            }
        }
        double[] level = spots(panels, zone -> LEVEL_PANELS.contains(zone.value()));
        double[] upright = spots(panels, zone -> !LEVEL_PANELS.contains(zone.value()));
        Optional<MeanDifference> horizontal = level.length > 1 && upright.length > 1
                ? Optional.of(MeanDifference.of(level, upright, MeanInterval.LEVEL))
                : Optional.empty();
        return new PanelAnalyses(neighbors, horizontal, steps(visit, panels));
    }

    private static double[] spots(List<ZoneThickness> panels, Predicate<ZoneId> which) {
        return panels.stream()
                .filter(panel -> which.test(panel.zone()))
                .flatMapToDouble(panel -> Arrays.stream(panel.spotsUm()))
                .toArray();
    }

    /** Ids of the panels that meet this one, whether the car has them or not: those listed for it, and those it is listed for. */
    static List<String> meeting(String zone) {
        Set<String> found = new LinkedHashSet<>(listed(zone));
        for (String pattern : MEETING.keySet()) {
            for (String side : SIDES) {
                String other = pattern.replace("SIDE", side);
                if (listed(other).contains(zone)) {
                    found.add(other);
                }
            }
        }
        return List.copyOf(found);
    }

    private static List<String> listed(String zone) {
        for (String side : SIDES) {
            String pattern = zone.replace("-" + side, "-SIDE");
            if (!pattern.equals(zone) && MEETING.containsKey(pattern)) {
                return MEETING.get(pattern).stream()
                        .map(other -> other.replace("SIDE", side))
                        .toList();
            }
        }
        return MEETING.getOrDefault(zone, List.of());
    }

    private static List<Step> steps(VisitRecord visit, List<ZoneThickness> panels) {
        Map<RecordId, ViewPoint> places = new HashMap<>();
        for (Recorded<Reading> row : visit.readings()) {
            row.value().point().ifPresent(point -> places.put(row.id(), point));
        }
        List<Step> steps = new ArrayList<>();
        for (ZoneThickness panel : panels) {
            List<Placed> placed = panel.spots().stream()
                    .filter(spot -> spot.um().isPresent())
                    .flatMap(spot -> spot.readings().stream()
                            .filter(places::containsKey)
                            .findFirst()
                            .map(row -> new Placed(places.get(row), spot.um().orElseThrow()))
                            .stream())
                    .toList();
            if (placed.stream().map(spot -> spot.place().view()).distinct().count() == 1) {
                PlaceStep.of(
                                array(placed, spot -> spot.place().x()),
                                array(placed, spot -> spot.place().y()),
                                array(placed, Placed::um))
                        .ifPresent(step -> steps.add(new Step(panel.zone(), step)));
            }
        }
        return steps;
    }

    /** A spot with a number, at the place of the first of its readings that has one. */
    private record Placed(ViewPoint place, double um) {}

    private static double[] array(List<Placed> spots, ToDoubleFunction<Placed> of) {
        return spots.stream().mapToDouble(of).toArray();
    }
}
