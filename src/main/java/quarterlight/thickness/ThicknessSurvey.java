package quarterlight.thickness;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import quarterlight.car.Substrate;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneId;
import quarterlight.thickness.gauge.GaugeCorrection;
import quarterlight.thickness.gauge.GaugeReach;
import quarterlight.thickness.spot.Spot;
import quarterlight.thickness.spot.Spots;
import quarterlight.thickness.statistics.MeanInterval;
import quarterlight.thickness.statistics.Outlier;
import quarterlight.thickness.statistics.Quantiles;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.reading.GaugeMode;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.reading.Reading;

/**
 * The statistics of every zone of a visit that has a reading, in the order of the zone table.
 *
 * @param zones zones with at least one reading, excluded ones too
 * @param modes modes the gauge is noted to have worked in anywhere on the car
 * @param correction applied to every number before anything was computed
 */
public record ThicknessSurvey(List<ZoneThickness> zones, Set<GaugeMode> modes, GaugeCorrection correction) {

    public ThicknessSurvey {
        zones = List.copyOf(zones);
        modes = Set.copyOf(modes);
        Objects.requireNonNull(correction, "correction");
    }

    /** The readings as they were typed, or corrected by the gauge checks if the inspector chose so and they allow it. */
    public static ThicknessSurvey of(VisitRecord visit, ZoneCatalog catalog) {
        return of(visit, catalog, chosen(visit));
    }

    private static GaugeCorrection chosen(VisitRecord visit) {
        return visit.facts().choices().gaugeCorrection()
                ? GaugeCorrection.ofTwoPoints(visit.gaugeChecks().stream()
                                .map(Recorded::value)
                                .toList())
                        .orElse(GaugeCorrection.NONE)
                : GaugeCorrection.NONE;
    }

    /** That a correction was chosen which cannot be right, so that every figure stands as typed; empty if nothing of the sort is so. */
    public static Optional<String> correctionRefused(VisitRecord visit) {
        return visit.facts().choices().gaugeCorrection()
                ? GaugeCorrection.refusal(
                        visit.gaugeChecks().stream().map(Recorded::value).toList())
                : Optional.empty();
    }

    /** The readings corrected by the gauge check. */
    public static ThicknessSurvey of(VisitRecord visit, ZoneCatalog catalog, GaugeCorrection correction) {
        Map<ZoneId, List<Recorded<Reading>>> byZone = new LinkedHashMap<>();
        for (Zone zone : catalog.all()) {
            byZone.put(zone.id(), new ArrayList<>());
        }
        Set<GaugeMode> modes = EnumSet.noneOf(GaugeMode.class);
        for (Recorded<Reading> reading : visit.readings()) {
            if (reading.value().value() instanceof GaugeValue.Range) {
                continue;
            }
            byZone.computeIfAbsent(reading.value().zone(), id -> new ArrayList<>())
                    .add(reading);
            reading.value().mode().ifPresent(modes::add);
        }
        List<ZoneThickness> zones = new ArrayList<>();
        byZone.forEach((zone, readings) -> {
            if (!readings.isEmpty()) {
                boolean readable = readable(visit, zone, readings, modes);
                Substrate made = visit.facts().car().substrateOf(zone);
                zones.add(zone(zone, readable ? Optional.of(made) : Optional.empty(), readings, correction));
            }
        });
        return new ThicknessSurvey(zones, modes, correction);
    }

    public Optional<ZoneThickness> zone(ZoneId id) {
        return zones.stream().filter(zone -> zone.zone().equals(id)).findFirst();
    }

    /**
     * By the modes noted in the zone, else by those noted anywhere on the car. Where no mode was noted and the gauge
     * found no metal on aluminum at all, it evidently reads steel only.
     */
    private static boolean readable(
            VisitRecord visit, ZoneId zone, List<Recorded<Reading>> readings, Set<GaugeMode> anywhere) {
        Set<GaugeMode> here = EnumSet.noneOf(GaugeMode.class);
        boolean metal = false;
        for (Recorded<Reading> reading : readings) {
            reading.value().mode().ifPresent(here::add);
            metal |= !(reading.value().value() instanceof GaugeValue.NoMetal);
        }
        Substrate substrate = visit.facts().car().substrateOf(zone);
        Set<GaugeMode> modes = here.isEmpty() ? anywhere : here;
        boolean deaf = substrate == Substrate.ALUMINUM && modes.isEmpty() && !metal;
        return !deaf && GaugeReach.reads(substrate, modes);
    }

    /** @param made what the zone is made of; empty if the gauge cannot read it, and all that was typed is then counted */
    private static ZoneThickness zone(
            ZoneId zone, Optional<Substrate> made, List<Recorded<Reading>> all, GaugeCorrection correction) {
        boolean readable = made.isPresent();
        List<Recorded<Reading>> used = all.stream()
                .filter(r -> r.value().exclude().isEmpty())
                .filter(r -> made.isEmpty() || GaugeReach.reads(made.get(), noted(r.value())))
                .toList();
        List<Spot> spots = new Spots(correction).of(used);
        double[] readings = values(used)
                .filter(GaugeValue.Measured.class::isInstance)
                .mapToDouble(value -> correction.um((GaugeValue.Measured) value))
                .toArray();
        int over = (int)
                values(used).filter(GaugeValue.OverRange.class::isInstance).count();
        double[] ofSpots =
                spots.stream().flatMapToDouble(spot -> spot.um().stream()).toArray();
        Optional<MeanInterval> interval =
                ofSpots.length > 1 ? Optional.of(MeanInterval.of(ofSpots, MeanInterval.LEVEL)) : Optional.empty();
        boolean some = readings.length > 0;
        return new ZoneThickness(
                zone,
                readable,
                readings.length,
                all.size() - used.size(),
                over,
                spots,
                interval.map(i -> OptionalDouble.of(i.mean()))
                        .orElse(some ? OptionalDouble.of(ofSpots[0]) : OptionalDouble.empty()),
                optional(interval.map(MeanInterval::sd)),
                optional(interval.map(MeanInterval::low)),
                optional(interval.map(MeanInterval::high)),
                some ? OptionalDouble.of(Quantiles.median(readings)) : OptionalDouble.empty(),
                some ? OptionalDouble.of(Quantiles.scaledMad(readings)) : OptionalDouble.empty(),
                Arrays.stream(readings).min(),
                Arrays.stream(readings).max(),
                Outlier.among(ofSpots));
    }

    private static Set<GaugeMode> noted(Reading reading) {
        return reading.mode().map(Set::of).orElse(Set.of());
    }

    private static Stream<GaugeValue> values(List<Recorded<Reading>> readings) {
        return readings.stream().map(reading -> reading.value().value());
    }

    private static OptionalDouble optional(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }
}
