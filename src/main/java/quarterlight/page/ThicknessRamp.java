package quarterlight.page;

import java.util.Arrays;
import java.util.List;
import quarterlight.findings.Findings;
import quarterlight.findings.Measured;
import quarterlight.thickness.ThicknessSurvey;
import quarterlight.thickness.ZoneThickness;
import quarterlight.units.Numerals;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.reading.GaugeValue;

/**
 * The scale of mean thickness that the cars of one page share: even steps are doublings, since coats add up and filler runs to
 * ten times a coat. Immutable.
 *
 * @param unit shown on the page
 * @param low value of the light end in the unit
 * @param doublings steps from the light end to the dark one, 1 or more
 */
public record ThicknessRamp(ThicknessUnit unit, double low, int doublings) {
    private static final double MIN_MIL = 1;
    private static final double MIN_UM = 25;
    private static final int MAX_DOUBLINGS = 10;

    /** The scale that holds the zone means of all the cars; 1 to 16 mil if none was measured. */
    public static ThicknessRamp of(List<Findings> cars, ThicknessUnit unit) {
        return of(unit, cars.stream().map(Findings::thickness).toList());
    }

    private static ThicknessRamp of(ThicknessUnit unit, List<ThicknessSurvey> cars) {
        double[] means = cars.stream()
                .flatMap(car -> car.zones().stream())
                .filter(ZoneThickness::readable)
                .flatMapToDouble(zone -> zone.meanUm().stream())
                .map(unit::fromUm)
                .toArray();
        double base = unit == ThicknessUnit.MIL ? MIN_MIL : MIN_UM;
        double least = Arrays.stream(means).min().orElse(base);
        double most = Arrays.stream(means).max().orElse(base * 16);
        double low = base;
        while (low * 2 <= least) {
            low *= 2;
        }
        int doublings = 1;
        while (low * (1 << doublings) < most) {
            doublings++;
        }
        return new ThicknessRamp(unit, low, doublings);
    }

    /** The scale of one car before anything of it was judged. */
    public static ThicknessRamp of(Measured car, ThicknessUnit unit) {
        return of(unit, List.of(car.thickness()));
    }

    /** The same scale, wide enough for every spot of a car. */
    public ThicknessRamp holdingSpots(Findings car) {
        double[] values = car.thickness().zones().stream()
                .filter(ZoneThickness::readable)
                .flatMap(zone -> zone.spots().stream())
                .flatMapToDouble(spot -> spot.um().stream())
                .map(unit::fromUm)
                .filter(value -> value > 0)
                .toArray();
        double from = low;
        int steps = doublings;
        double least = Arrays.stream(values).min().orElse(from);
        while (from > least && steps < MAX_DOUBLINGS) {
            from /= 2;
            steps++;
        }
        double most = Arrays.stream(values).max().orElse(from);
        while (from * (1 << steps) < most && steps < MAX_DOUBLINGS) {
            steps++;
        }
        return new ThicknessRamp(unit, from, steps);
    }

    /** The unit in which most of a visit's readings were typed; mil if none was. */
    public static ThicknessUnit usualUnit(Findings car) {
        long um = car.visit().readings().stream()
                .filter(r -> r.value().value() instanceof GaugeValue.Measured m && m.unit() == ThicknessUnit.UM)
                .count();
        return um * 2 > car.visit().readings().size() ? ThicknessUnit.UM : ThicknessUnit.MIL;
    }

    /** Where a thickness lies on the ramp, 0 to 1. */
    public double share(double um) {
        double steps = Math.log(unit.fromUm(um) / low) / Math.log(2);
        return Math.min(1, Math.max(0, steps / doublings));
    }

    /** A thickness as written in a zone: mil with one decimal, um with none. */
    public String number(double um) {
        return Numerals.fixed(unit.fromUm(um), unit == ThicknessUnit.MIL ? 1 : 0);
    }

    /** A value with its unit: as typed where it was typed in the unit of the page, else converted. */
    public String typed(GaugeValue.Measured value) {
        String figure = value.unit() == unit
                ? Numerals.trueMinus(Numerals.typed(value.typed()))
                : number(value.thickness().um());
        return figure + "\u2009" + unitName();
    }

    public String unitName() {
        return unit == ThicknessUnit.MIL ? "mil" : "\u00b5m";
    }
}
