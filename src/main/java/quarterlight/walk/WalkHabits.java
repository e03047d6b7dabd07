package quarterlight.walk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import quarterlight.car.ZoneId;
import quarterlight.walk.pace.GapCounts;

/**
 * How the inspector walks, counted on the pinned photos of earlier visits: moves from zone to zone, how often a zone was photographed,
 * and which gaps were moves. Immutable; counts of several visits add up.
 *
 * @param moves moves from a zone to another, counted
 * @param stops stops at each zone, counted
 * @param gaps which gaps between neighboring pinned photos were moves
 */
public record WalkHabits(Map<ZoneId, Map<ZoneId, Integer>> moves, Map<ZoneId, Integer> stops, GapCounts gaps) {
    public static final WalkHabits NONE = new WalkHabits(Map.of(), Map.of(), GapCounts.NONE);

    public WalkHabits {
        Map<ZoneId, Map<ZoneId, Integer>> copy = new HashMap<>();
        moves.forEach((from, to) -> copy.put(from, Map.copyOf(to)));
        moves = Map.copyOf(copy);
        stops = Map.copyOf(stops);
        Objects.requireNonNull(gaps, "gaps");
    }

    /** The habits of one visit whose photos are pinned: neighbors in time that are both pinned count. */
    public static WalkHabits of(List<Shot> shots) {
        List<Shot> inTime = new ArrayList<>(shots);
        inTime.sort(Comparator.comparingDouble(Shot::seconds).thenComparing(Shot::photo));
        double[] lengths = new double[Math.max(0, inTime.size() - 1)];
        for (int i = 0; i < lengths.length; i++) {
            lengths[i] = inTime.get(i + 1).seconds() - inTime.get(i).seconds();
        }
        double usual = GapCounts.usual(lengths);
        Map<ZoneId, Map<ZoneId, Integer>> moves = new HashMap<>();
        Map<ZoneId, Integer> stops = new HashMap<>();
        List<Integer> gaps = new ArrayList<>(GapCounts.NONE.gaps());
        List<Integer> moved = new ArrayList<>(GapCounts.NONE.moved());
        List<Integer> reached = new ArrayList<>(GapCounts.NONE.reached());
        List<Integer> ended = new ArrayList<>(GapCounts.NONE.ended());
        int photosHere = 0;
        for (int i = 0; i < inTime.size(); i++) {
            List<ZoneId> now = inTime.get(i).pinned();
            List<ZoneId> before = i == 0 ? List.of() : inTime.get(i - 1).pinned();
            boolean both = !now.isEmpty() && !before.isEmpty();
            boolean stays = both && before.get(0).equals(now.get(0));
            if (!now.isEmpty() && !stays) {
                stops.merge(now.get(0), 1, Integer::sum);
            }
            if (both) {
                int bin = GapCounts.bin(lengths[i - 1], usual);
                gaps.set(bin, gaps.get(bin) + 1);
                moved.set(bin, moved.get(bin) + (stays ? 0 : 1));
            }
            if (both && photosHere > 0) {
                int phase = Math.min(photosHere, GapCounts.PHASES) - 1;
                reached.set(phase, reached.get(phase) + 1);
                ended.set(phase, ended.get(phase) + (stays ? 0 : 1));
            }
            photosHere =
                    now.isEmpty() ? 0 : stays && photosHere > 0 ? photosHere + 1 : both && !stays || i == 0 ? 1 : 0;
            if (both && !stays) {
                moves.computeIfAbsent(before.get(0), zone -> new HashMap<>()).merge(now.get(0), 1, Integer::sum);
            }
        }
        return new WalkHabits(moves, stops, new GapCounts(gaps, moved, reached, ended));
    }

    public WalkHabits plus(WalkHabits other) {
        Map<ZoneId, Map<ZoneId, Integer>> sum = new HashMap<>();
        Map<ZoneId, Integer> allStops = new HashMap<>();
        for (WalkHabits one : List.of(this, other)) {
            one.moves.forEach((from, to) -> {
                Map<ZoneId, Integer> row = sum.computeIfAbsent(from, zone -> new HashMap<>());
                to.forEach((zone, count) -> row.merge(zone, count, Integer::sum));
            });
            one.stops.forEach((zone, count) -> allStops.merge(zone, count, Integer::sum));
        }
        return new WalkHabits(sum, allStops, gaps.plus(other.gaps));
    }
}
