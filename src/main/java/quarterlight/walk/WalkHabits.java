package quarterlight.walk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import quarterlight.car.ZoneId;

/**
 * How the inspector walks, counted on the pinned photos of earlier visits: moves from zone to zone, and how many gaps were
 * moves at all. Immutable; counts of several visits add up.
 *
 * @param moves moves from a zone to another, counted
 * @param gaps gaps between neighboring pinned photos
 * @param moved how many of these gaps were moves
 */
public record WalkHabits(Map<ZoneId, Map<ZoneId, Integer>> moves, int gaps, int moved) {
    public static final WalkHabits NONE = new WalkHabits(Map.of(), 0, 0);

    public WalkHabits {
        Map<ZoneId, Map<ZoneId, Integer>> copy = new HashMap<>();
        moves.forEach((from, to) -> copy.put(from, Map.copyOf(to)));
        moves = Map.copyOf(copy);
    }

    /** The habits of one visit whose photos are pinned: neighbors in time that are both pinned count. */
    public static WalkHabits of(List<Shot> shots) {
        List<Shot> inTime = new ArrayList<>(shots);
        inTime.sort(java.util.Comparator.comparingDouble(Shot::seconds));
        Map<ZoneId, Map<ZoneId, Integer>> moves = new HashMap<>();
        int gaps = 0;
        int moved = 0;
        for (int i = 1; i < inTime.size(); i++) {
            List<ZoneId> before = inTime.get(i - 1).pinned();
            List<ZoneId> now = inTime.get(i).pinned();
            if (before.isEmpty() || now.isEmpty()) {
                continue;
            }
            gaps++;
            if (!before.get(0).equals(now.get(0))) {
                moved++;
                moves.computeIfAbsent(before.get(0), zone -> new HashMap<>()).merge(now.get(0), 1, Integer::sum);
            }
        }
        return new WalkHabits(moves, gaps, moved);
    }

    public WalkHabits plus(WalkHabits other) {
        Map<ZoneId, Map<ZoneId, Integer>> sum = new HashMap<>();
        for (WalkHabits one : List.of(this, other)) {
            one.moves.forEach((from, to) -> {
                Map<ZoneId, Integer> row = sum.computeIfAbsent(from, zone -> new HashMap<>());
                to.forEach((zone, count) -> row.merge(zone, count, Integer::sum));
            });
        }
        return new WalkHabits(sum, gaps + other.gaps, moved + other.moved);
    }
}
