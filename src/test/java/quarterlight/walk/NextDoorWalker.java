package quarterlight.walk;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import quarterlight.car.ZoneId;

/**
 * Walks from zone to zone next door by a liking of their own for where to go from each, mostly to the liked zone not seen yet, with detours
 * to any place. The walk that the method is written for.
 */
final class NextDoorWalker implements Walker {
    private final Map<ZoneId, List<ZoneId>> liked = new HashMap<>();
    private final List<ZoneId> zones;
    private final Habit habit;

    /**
     * @param photos about how many a visit
     * @param byLiking chance of going to the most liked zone next door that was not seen yet, else to any next door
     * @param detour chance of going to any zone at all instead
     * @param back chance of going back to an earlier stop
     */
    record Habit(Pace pace, int photos, double byLiking, double detour, double back) {}

    NextDoorWalker(Map<ZoneId, Set<ZoneId>> nextDoor, Habit habit, Random habits) {
        this.habit = habit;
        zones = nextDoor.keySet().stream().sorted().toList();
        for (ZoneId zone : zones) {
            List<ZoneId> order =
                    new ArrayList<>(nextDoor.get(zone).stream().sorted().toList());
            Collections.shuffle(order, habits);
            liked.put(zone, order);
        }
    }

    @Override
    public List<Snap> visit(Random random) {
        List<ZoneId> seen = new ArrayList<>();
        Camera camera = new Camera(habit.pace(), 0, random);
        ZoneId at = new ZoneId("bumper-front");
        while (camera.count() < habit.photos()) {
            seen.add(at);
            camera.stop(at);
            at = next(at, seen, random);
        }
        return camera.snaps();
    }

    private ZoneId next(ZoneId at, List<ZoneId> seen, Random random) {
        List<ZoneId> order = liked.get(at);
        double dice = random.nextDouble();
        if (order.isEmpty() || dice < habit.detour()) {
            return zones.get(random.nextInt(zones.size()));
        }
        if (dice < habit.detour() + habit.back()) {
            return seen.get(random.nextInt(seen.size()));
        }
        Set<ZoneId> known = new HashSet<>(seen);
        if (random.nextDouble() < habit.byLiking()) {
            for (ZoneId zone : order) {
                if (!known.contains(zone)) {
                    return zone;
                }
            }
        }
        return order.get(random.nextInt(order.size()));
    }
}
