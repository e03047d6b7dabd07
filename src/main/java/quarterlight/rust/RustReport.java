package quarterlight.rust;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneGroup;
import quarterlight.car.ZoneId;
import quarterlight.rust.plane.MarkedArea;
import quarterlight.units.Area;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.annotation.TraceKind;
import quarterlight.visit.pin.Recorded;

/**
 * The rust of a whole car: every zone of it, and every trace. Immutable.
 *
 * @param zones the car's zones in the order of the zone table, and others only if a trace lies on them
 * @param traces in the order of recording
 */
public record RustReport(List<ZoneRust> zones, List<TraceArea> traces) {
    public RustReport {
        zones = List.copyOf(zones);
        traces = List.copyOf(traces);
    }

    /** The rust of a visit's car, marks taken to be off by {@link MarkedArea#USUAL_MARK_PX}. */
    public static RustReport of(VisitRecord visit, ZoneCatalog catalog, Map<ZoneId, Area> zoneAreas) {
        return of(visit, catalog, zoneAreas, MarkedArea.USUAL_MARK_PX);
    }

    /**
     * The rust of a visit's car.
     *
     * @param zoneAreas nominal areas; a zone that has none gets no share
     * @param markPx standard deviation of a mark in x and in y, pixels of the upright photo
     */
    public static RustReport of(VisitRecord visit, ZoneCatalog catalog, Map<ZoneId, Area> zoneAreas, double markPx) {
        List<TraceArea> areas = new ArrayList<>();
        List<MeasuredTrace> measured = new ArrayList<>();
        for (Recorded<Trace> row : visit.traces()) {
            TraceReading reading = TraceReading.of(row, visit, markPx);
            areas.add(reading.area());
            reading.measured().ifPresent(measured::add);
        }
        List<ZoneRust> zones = new ArrayList<>();
        for (Zone zone : zones(visit, catalog)) {
            zones.add(ZoneJudgment.of(zone, visit, measured, Optional.ofNullable(zoneAreas.get(zone.id()))));
        }
        return new RustReport(zones, areas);
    }

    /** True for what counts as rust: surface, scale, pitting, hole and rot; not for crack and damage. */
    public static boolean isRust(TraceKind kind) {
        return switch (kind) {
            case SURFACE, SCALE, PITTING, HOLE, ROT -> true;
            case CRACK, DAMAGE -> false;
        };
    }

    public Optional<ZoneRust> zone(ZoneId id) {
        return zones.stream().filter(zone -> zone.zone().id().equals(id)).findFirst();
    }

    /** The extent of every zone that has one, for the finish history. */
    public Map<ZoneId, RustExtent> extents() {
        Map<ZoneId, RustExtent> extents = new LinkedHashMap<>();
        for (ZoneRust zone : zones) {
            zone.extent().ifPresent(extent -> extents.put(zone.zone().id(), extent));
        }
        return extents;
    }

    private static List<Zone> zones(VisitRecord visit, ZoneCatalog catalog) {
        Set<ZoneId> traced = new LinkedHashSet<>();
        visit.traces().forEach(row -> traced.add(row.value().zone()));
        return catalog.all().stream()
                .filter(zone -> traced.contains(zone.id())
                        || zone.group() != ZoneGroup.RECORD
                                && zone.belongsTo(visit.facts().car().body()))
                .toList();
    }
}
