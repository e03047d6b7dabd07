package quarterlight.finish;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import quarterlight.car.FinishProfile;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneId;
import quarterlight.finish.place.ZoneSizes;
import quarterlight.rust.RustExtent;
import quarterlight.thickness.ThicknessSurvey;
import quarterlight.thickness.ZoneThickness;
import quarterlight.thickness.gauge.GaugeReach;
import quarterlight.thickness.spot.SpotKind;
import quarterlight.units.Thickness;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.pin.ViewPoint;
import quarterlight.visit.trial.Sign;
import quarterlight.visit.trial.SignKind;

/**
 * All that the finish history of a car rests on.
 *
 * @param gaugeRange range of the gauge, above 0
 * @param zones every outer panel of the car in the order of the zone table, with or without evidence; none twice
 * @param sizes areas and outlines of the zones
 */
public record FinishEvidence(FinishProfile profile, Thickness gaugeRange, List<ZoneEvidence> zones, ZoneSizes sizes) {
    public FinishEvidence {
        Objects.requireNonNull(profile, "profile");
        zones = List.copyOf(zones);
        Objects.requireNonNull(sizes, "sizes");
        if (!(gaugeRange.um() > 0)) {
            throw new IllegalArgumentException("the gauge's range is above 0 um, not " + gaugeRange.um());
        }
        if (zones.stream().map(ZoneEvidence::zone).distinct().count() != zones.size()) {
            throw new IllegalArgumentException("a zone stands twice in the evidence");
        }
    }

    /** Without the sizes of the zones: nothing is then said of hidden patches. */
    public FinishEvidence(FinishProfile profile, Thickness gaugeRange, List<ZoneEvidence> zones) {
        this(profile, gaugeRange, zones, ZoneSizes.NONE);
    }

    /**
     * Gathers the evidence of a visit. A sign speaks for the panel it names, else for the zone it was seen in; on a zone
     * without finish (a jamb, an underside) that names no panel it moves nothing. A sign noted several times counts once,
     * and seen wins over not seen.
     *
     * @param survey statistics of the visit's readings
     * @param rust extent in every zone that was looked at for rust; others absent
     */
    public static FinishEvidence of(
            VisitRecord visit, ZoneCatalog catalog, ThicknessSurvey survey, Map<ZoneId, RustExtent> rust) {
        Map<ZoneId, Map<SignKind, Boolean>> signs = signs(visit);
        Map<RecordId, ViewPoint> points = points(visit);
        List<ZoneEvidence> zones = new ArrayList<>();
        for (Zone zone : catalog.zonesOf(visit.facts().car().body())) {
            if (zone.finish()) {
                ZoneId id = zone.id();
                Optional<ZoneThickness> measured = survey.zone(id);
                boolean readable = measured.map(ZoneThickness::readable)
                        .orElseGet(() -> GaugeReach.reads(visit.facts().car().substrateOf(id), survey.modes()));
                zones.add(new ZoneEvidence(
                        id,
                        readable,
                        measured.map(FinishEvidence::values).orElse(List.of()),
                        measured.map(ZoneThickness::overSpots).orElse(0),
                        measured.map(ZoneThickness::noMetal).orElse(0),
                        signs.getOrDefault(id, Map.of()),
                        Optional.ofNullable(rust.get(id)),
                        measured.map(one -> places(one, points)).orElse(List.of())));
            }
        }
        return new FinishEvidence(visit.facts().car().finish(), visit.facts().gaugeRange(), zones);
    }

    private static List<Double> values(ZoneThickness zone) {
        return Arrays.stream(zone.spotsUm()).boxed().toList();
    }

    private static Map<RecordId, ViewPoint> points(VisitRecord visit) {
        Map<RecordId, ViewPoint> points = new HashMap<>();
        visit.readings().forEach(row -> row.value().point().ifPresent(point -> points.put(row.id(), point)));
        return points;
    }

    /** Places of the spots with a number, then of those beyond the range, as far as they are known. */
    private static List<ViewPoint> places(ZoneThickness zone, Map<RecordId, ViewPoint> points) {
        List<ViewPoint> places = new ArrayList<>();
        for (SpotKind kind : List.of(SpotKind.VALUE, SpotKind.OVER)) {
            zone.spots().stream()
                    .filter(spot -> spot.kind() == kind)
                    .map(spot ->
                            spot.readings().stream().filter(points::containsKey).findFirst())
                    .flatMap(Optional::stream)
                    .map(points::get)
                    .forEach(places::add);
        }
        return places;
    }

    private static Map<ZoneId, Map<SignKind, Boolean>> signs(VisitRecord visit) {
        Map<ZoneId, Map<SignKind, Boolean>> signs = new HashMap<>();
        for (Recorded<Sign> row : visit.signs()) {
            Sign sign = row.value();
            signs.computeIfAbsent(sign.speaksFor().orElse(sign.zone()), id -> new EnumMap<>(SignKind.class))
                    .merge(sign.kind(), sign.seen(), Boolean::logicalOr);
        }
        return signs;
    }

    /** The same with the sizes of the zones. */
    public FinishEvidence with(ZoneSizes known) {
        return new FinishEvidence(profile, gaugeRange, zones, known);
    }

    /** The same with other evidence for one zone: what if it were so? */
    public FinishEvidence with(ZoneEvidence changed) {
        List<ZoneEvidence> all = new ArrayList<>(zones);
        all.replaceAll(zone -> zone.zone().equals(changed.zone()) ? changed : zone);
        return new FinishEvidence(profile, gaugeRange, all, sizes);
    }

    public Optional<ZoneEvidence> zone(ZoneId id) {
        return zones.stream().filter(zone -> zone.zone().equals(id)).findFirst();
    }
}
