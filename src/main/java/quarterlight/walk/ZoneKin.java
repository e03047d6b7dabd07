package quarterlight.walk;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quarterlight.car.Zone;
import quarterlight.car.ZoneId;

/**
 * Which zones are of a kind: the same place on the other side, the same part at another corner of the car (all wheels, all
 * jambs), and the same group of the zone table (all glass, the whole bay). One who works by subject goes from one to
 * another of them, however far apart they are. Immutable.
 *
 * @param mirrors the same place on the other side
 * @param kinds for each zone the others of its kind with their weights
 */
public record ZoneKin(Map<ZoneId, ZoneId> mirrors, Map<ZoneId, Map<ZoneId, Double>> kinds) {
    /** Knows of no kin. */
    public static final ZoneKin NONE = new ZoneKin(Map.of(), Map.of());

    /** How much likelier the same part elsewhere is than another zone of the group. Judgement. */
    private static final double SAME_PART = 4;

    /** Over how many zones of its kind in between a zone grows less likely by e. Judgement. */
    private static final double BETWEEN = 2;

    private static final Set<String> PLACES = Set.of("left", "right", "front", "rear", "middle", "spare");

    public ZoneKin {
        mirrors = Map.copyOf(mirrors);
        kinds = Map.copyOf(kinds);
    }

    /** The kin among the zones of a car. */
    public static ZoneKin of(List<Zone> zones) {
        Map<ZoneId, ZoneId> mirrors = new HashMap<>();
        Map<ZoneId, Map<ZoneId, Double>> kinds = new HashMap<>();
        for (Zone zone : zones) {
            zone.mirror().ifPresent(other -> mirrors.put(zone.id(), other));
            Map<ZoneId, Double> kin = new LinkedHashMap<>();
            for (Zone other : zones) {
                if (other.equals(zone)) {
                    continue;
                }
                if (part(other).equals(part(zone))) {
                    kin.put(other.id(), SAME_PART);
                } else if (other.group() == zone.group()) {
                    kin.put(other.id(), 1.0);
                }
            }
            kinds.put(zone.id(), Map.copyOf(kin));
        }
        return new ZoneKin(mirrors, kinds);
    }

    /**
     * The same for one who takes the zones of a kind in the order of a walk, from either end: each is less likely the more of its kind lie between, the
     * shorter way round.
     *
     * @param order zones in the order in which one comes to them; zones that are not in it keep their weights
     */
    public ZoneKin inTurn(List<ZoneId> order) {
        Map<ZoneId, Map<ZoneId, Double>> weighed = new HashMap<>();
        kinds.forEach((from, kin) -> {
            List<ZoneId> own = order.stream()
                    .filter(zone -> zone.equals(from) || kin.containsKey(zone))
                    .toList();
            int at = own.indexOf(from);
            Map<ZoneId, Double> row = new LinkedHashMap<>(kin);
            if (at >= 0) {
                row.replaceAll((zone, weight) -> weight * factor(own, at, own.indexOf(zone)));
            }
            weighed.put(from, Map.copyOf(row));
        });
        return new ZoneKin(mirrors, weighed);
    }

    private static double factor(List<ZoneId> own, int at, int to) {
        if (to < 0) {
            return 1;
        }
        int steps = Math.abs(to - at);
        return Math.exp(-(Math.min(steps, own.size() - steps) - 1) / BETWEEN);
    }

    /** What is left of a zone's id without its place on the car. */
    private static Set<String> part(Zone zone) {
        return Stream.of(zone.id().value().split("-"))
                .filter(word -> !PLACES.contains(word))
                .collect(Collectors.toSet());
    }
}
