package quarterlight.thickness;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneId;
import quarterlight.car.body.DriveSide;
import quarterlight.thickness.statistics.MeanDifference;
import quarterlight.thickness.statistics.MeanInterval;
import quarterlight.thickness.statistics.VarianceComponents;

/**
 * The zones of a car set against one another: left against right, each zone against the rest, and how the scatter divides
 * between panels and within them. Only readable outer panels take part.
 *
 * @param sides pairs of zones with two spots or more on both sides
 * @param against each zone with two spots or more against all spots of the other zones
 * @param components scatter between and within panels; empty with fewer than two panels or no panel of two spots
 */
public record CarThickness(List<Pair> sides, List<Against> against, Optional<VarianceComponents> components) {

    /** Left less right. */
    public record Pair(ZoneId left, ZoneId right, MeanDifference difference) {}

    /** The zone less the rest of the car. */
    public record Against(ZoneId zone, MeanDifference difference) {}

    public CarThickness {
        sides = List.copyOf(sides);
        against = List.copyOf(against);
    }

    public static CarThickness of(ThicknessSurvey survey, ZoneCatalog catalog) {
        List<ZoneThickness> panels = survey.zones().stream()
                .filter(zone -> zone.readable() && zone.valueSpots() > 0)
                .filter(zone -> catalog.find(zone.zone()).map(Zone::finish).orElse(false))
                .toList();
        List<Pair> sides = new ArrayList<>();
        List<Against> against = new ArrayList<>();
        for (ZoneThickness panel : panels) {
            Zone zone = catalog.get(panel.zone());
            boolean left = zone.side().equals(Optional.of(DriveSide.LEFT));
            if (left && zone.mirror().isPresent()) {
                panels.stream()
                        .filter(other -> other.zone().equals(zone.mirror().get()))
                        .filter(other -> panel.valueSpots() > 1 && other.valueSpots() > 1)
                        .forEach(other ->
                                sides.add(new Pair(panel.zone(), other.zone(), difference(panel, other.spotsUm()))));
            }
            double[] rest = panels.stream()
                    .filter(other -> !other.zone().equals(panel.zone()))
                    .flatMapToDouble(other -> Arrays.stream(other.spotsUm()))
                    .toArray();
            if (panel.valueSpots() > 1 && rest.length > 1) {
                against.add(new Against(panel.zone(), difference(panel, rest)));
            }
        }
        List<double[]> groups = panels.stream().map(ZoneThickness::spotsUm).toList();
        boolean enough = groups.size() > 1 && groups.stream().anyMatch(group -> group.length > 1);
        return new CarThickness(sides, against, enough ? Optional.of(VarianceComponents.of(groups)) : Optional.empty());
    }

    private static MeanDifference difference(ZoneThickness zone, double[] other) {
        return MeanDifference.of(zone.spotsUm(), other, MeanInterval.LEVEL);
    }
}
