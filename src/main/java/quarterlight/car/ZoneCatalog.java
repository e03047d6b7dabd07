package quarterlight.car;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quarterlight.car.body.Body;

/** Every zone there is, in the order of the zone table, and which of them a body has. Immutable. */
public final class ZoneCatalog {
    private final Map<ZoneId, Zone> zones;

    /** @throws IllegalArgumentException if an id stands twice or a mirror zone is missing or not mutual */
    public ZoneCatalog(List<Zone> rows) {
        Map<ZoneId, Zone> byId = new LinkedHashMap<>();
        for (Zone zone : rows) {
            if (byId.put(zone.id(), zone) != null) {
                throw new IllegalArgumentException("the zone table has " + zone.id() + " twice");
            }
        }
        for (Zone zone : rows) {
            zone.mirror().ifPresent(mirror -> requireMutual(zone, byId.get(mirror)));
        }
        zones = Collections.unmodifiableMap(byId);
    }

    private static void requireMutual(Zone zone, Zone mirror) {
        if (mirror == null || !mirror.mirror().equals(Optional.of(zone.id()))) {
            throw new IllegalArgumentException("the mirror of zone " + zone.id() + " does not name it back");
        }
    }

    public Optional<Zone> find(ZoneId id) {
        return Optional.ofNullable(zones.get(id));
    }

    /** @throws IllegalArgumentException if there is no such zone */
    public Zone get(ZoneId id) {
        return find(id).orElseThrow(() -> new IllegalArgumentException("there is no zone " + id));
    }

    public List<Zone> all() {
        return List.copyOf(zones.values());
    }

    /** The zones of a body in the order of the table. */
    public List<Zone> zonesOf(Body body) {
        List<Zone> found = new ArrayList<>();
        for (Zone zone : zones.values()) {
            if (zone.belongsTo(body)) {
                found.add(zone);
            }
        }
        return List.copyOf(found);
    }
}
