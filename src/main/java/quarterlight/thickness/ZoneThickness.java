package quarterlight.thickness;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import quarterlight.car.ZoneId;
import quarterlight.thickness.spot.Spot;
import quarterlight.thickness.spot.SpotKind;
import quarterlight.thickness.statistics.Outlier;

/**
 * Statistics of the readings of one zone, in um. Mean, sd, interval and outliers are over spots; median, MAD and range over
 * readings. What too few data do not give is empty: mean without a value, sd and interval for one spot.
 *
 * @param readable false if the gauge cannot read what the zone is made of; the statistics then say what was typed, no more
 * @param readings numbers used; those without metal, beyond the range or excluded are counted apart
 * @param excluded readings that take no part: by a reason, or noted in a mode that does not read the zone's substrate
 * @param overRange readings beyond the gauge's range
 * @param spots every spot, those without a number too
 * @param ci95LowUm lower end of the 95 % Student interval of the mean
 * @param madUm median absolute deviation times 1.4826
 */
public record ZoneThickness(
        ZoneId zone,
        boolean readable,
        int readings,
        int excluded,
        int overRange,
        List<Spot> spots,
        OptionalDouble meanUm,
        OptionalDouble sdUm,
        OptionalDouble ci95LowUm,
        OptionalDouble ci95HighUm,
        OptionalDouble medianUm,
        OptionalDouble madUm,
        OptionalDouble minUm,
        OptionalDouble maxUm,
        List<Outlier> outliers) {
    public ZoneThickness {
        Objects.requireNonNull(zone, "zone");
        spots = List.copyOf(spots);
        outliers = List.copyOf(outliers);
    }

    /** True if the interval of the mean is worth printing: too few spots give one that reaches below zero. */
    public boolean showsInterval() {
        return ci95LowUm.isPresent() && ci95LowUm.getAsDouble() > 0;
    }

    /** Spots with a number: n of the mean. */
    public int valueSpots() {
        return count(SpotKind.VALUE);
    }

    /** Spots where the gauge found no metal. */
    public int noMetal() {
        return count(SpotKind.NO_METAL);
    }

    /** Spots beyond the gauge's range. */
    public int overSpots() {
        return count(SpotKind.OVER);
    }

    /** Values of the spots in um, in the order taken; a new array. */
    public double[] spotsUm() {
        return spots.stream().flatMapToDouble(spot -> spot.um().stream()).toArray();
    }

    private int count(SpotKind kind) {
        return (int) spots.stream().filter(spot -> spot.kind() == kind).count();
    }
}
