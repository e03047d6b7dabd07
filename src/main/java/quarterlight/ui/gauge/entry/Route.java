package quarterlight.ui.gauge.entry;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneGroup;
import quarterlight.car.ZoneId;
import quarterlight.ui.kit.Settings;
import quarterlight.visit.VisitRecord;

/** The way round the car that the entry of readings follows. Pure functions. */
public final class Route {
    private Route() {}

    private static String key(VisitRecord visit) {
        return "gauge.route." + visit.facts().car().body().style().word();
    }

    /** The route the user set for this body style; else its outer zones in the order of the table. */
    public static List<ZoneId> of(VisitRecord visit, ZoneCatalog catalog, Settings settings) {
        List<Zone> zones = catalog.zonesOf(visit.facts().car().body());
        Set<String> there = zones.stream().map(zone -> zone.id().value()).collect(Collectors.toSet());
        List<ZoneId> set = settings.text(key(visit)).stream()
                .flatMap(text -> Stream.of(text.split(" ")))
                .filter(there::contains)
                .map(ZoneId::new)
                .toList();
        return set.isEmpty()
                ? zones.stream()
                        .filter(zone -> zone.group() == ZoneGroup.OUTER)
                        .map(Zone::id)
                        .toList()
                : set;
    }

    /** The settings with the order in which this visit's zones were first read as the route. */
    public static Settings asRead(VisitRecord visit, Settings settings) {
        Set<String> read = new LinkedHashSet<>();
        visit.readings().forEach(row -> read.add(row.value().zone().value()));
        return settings.with(key(visit), String.join(" ", read));
    }

    /** The zone after one; the first of the route if that one is not on it, empty at the end. */
    public static Optional<ZoneId> after(List<ZoneId> route, Optional<ZoneId> zone) {
        List<ZoneId> ways = new ArrayList<>(route);
        int at = zone.map(ways::indexOf).orElse(-1);
        return at + 1 < ways.size() ? Optional.of(ways.get(at + 1)) : Optional.empty();
    }
}
