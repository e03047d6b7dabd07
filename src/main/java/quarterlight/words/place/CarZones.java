package quarterlight.words.place;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneId;
import quarterlight.car.body.Body;
import quarterlight.car.body.DriveSide;
import quarterlight.words.lexicon.PartName;

/** The zones of the car at hand, and which of them a part with a side and an end means. Immutable. */
public final class CarZones {
    private final Set<String> zones = new HashSet<>();
    private final Set<String> finished = new HashSet<>();
    private final DriveSide drive;

    public CarZones(ZoneCatalog catalog, Body body, DriveSide drive) {
        for (Zone zone : catalog.zonesOf(body)) {
            zones.add(zone.id().value());
            if (zone.finish()) {
                finished.add(zone.id().value());
            }
        }
        this.drive = drive;
    }

    SpokenSide driver() {
        return drive == DriveSide.LEFT ? SpokenSide.LEFT : SpokenSide.RIGHT;
    }

    /** True for an outer panel that a thickness gauge is laid on. */
    public boolean finished(ZoneId zone) {
        return finished.contains(zone.value());
    }

    /** Without one, as in a pickup, the seat reaches from side to side. */
    boolean hasRearSeat() {
        return zones.contains("seat-rear");
    }

    boolean has(PartName part) {
        return part.zones().stream()
                .anyMatch(together -> !of(together, SpokenSide.BOTH, End.BOTH).isEmpty());
    }

    /** The zones of the first alternative that this car has. */
    List<ZoneId> of(PartName part, SpokenSide side, End end) {
        for (List<String> together : part.zones()) {
            List<ZoneId> found = of(together, side, end);
            if (!found.isEmpty()) {
                return found;
            }
        }
        if (end != End.FRONT) {
            return of(part, side, End.FRONT);
        }
        return List.of();
    }

    private List<ZoneId> of(List<String> together, SpokenSide side, End end) {
        Set<ZoneId> found = new LinkedHashSet<>();
        for (String pattern : together) {
            for (String ended : ends(pattern, end)) {
                for (String sided : sides(ended, side)) {
                    if (zones.contains(sided)) {
                        found.add(new ZoneId(sided));
                    }
                }
            }
        }
        return List.copyOf(found);
    }

    private static List<String> ends(String pattern, End end) {
        List<String> all = new ArrayList<>();
        if (end != End.REAR) {
            all.add(pattern.replace("{e}", "front").replace("{f}", "front"));
        }
        if (end != End.FRONT) {
            all.add(pattern.replace("{e}", "rear").replace("{f}", "rear"));
        }
        return all;
    }

    private static List<String> sides(String pattern, SpokenSide side) {
        List<String> all = new ArrayList<>();
        boolean both = side == SpokenSide.BOTH || pattern.contains("{b}");
        if (both || side == SpokenSide.LEFT) {
            all.add(pattern.replace("{s}", "left").replace("{b}", "left"));
        }
        if (both || side == SpokenSide.RIGHT) {
            all.add(pattern.replace("{s}", "right").replace("{b}", "right"));
        }
        return all;
    }
}
