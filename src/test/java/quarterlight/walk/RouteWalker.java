package quarterlight.walk;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import quarterlight.car.ZoneId;

/**
 * Walks a route of their own, made once. From visit to visit stops are left out, two change places, others come in.
 */
final class RouteWalker implements Walker {
    private static final double LEFT_OUT = 0.12;
    private static final double CHANGE_PLACES = 0.06;

    private final List<ZoneId> firstLap;
    private final List<ZoneId> route;
    private final Habit habit;

    /**
     * @param wander chance, at each stop, of going back to an earlier one or off to any of the route
     * @param clockErrorSeconds how far the second camera's clock stays off at most; no second camera if 0
     */
    record Habit(Pace pace, double wander, double clockErrorSeconds) {}

    /** @param firstLap zones seen quickly before the route begins */
    RouteWalker(List<ZoneId> firstLap, List<ZoneId> route, Habit habit) {
        this.firstLap = List.copyOf(firstLap);
        this.route = List.copyOf(route);
        this.habit = habit;
    }

    /** A route through lists of zones, each taken as a whole, in passing or not at all. */
    static List<ZoneId> through(List<List<ZoneId>> lists, int stops, Random habits) {
        List<List<ZoneId>> order = new ArrayList<>(lists);
        for (int i = 0; i < 3; i++) {
            Collections.swap(order, habits.nextInt(order.size()), habits.nextInt(order.size()));
        }
        double all = lists.stream().mapToInt(List::size).sum();
        List<ZoneId> route = new ArrayList<>();
        for (List<ZoneId> list : order) {
            List<ZoneId> own = new ArrayList<>(list);
            if (habits.nextInt(3) == 0) {
                Collections.reverse(own);
            }
            double share = 2 * habits.nextDouble() * stops / all / (1 - LEFT_OUT);
            own.removeIf(zone -> habits.nextDouble() >= share);
            route.addAll(own);
        }
        return route;
    }

    /** The stops of another walker's visit as a route. */
    static List<ZoneId> after(Walker other, Random habits) {
        List<ZoneId> zones = other.visit(habits).stream().map(Snap::zone).toList();
        return IntStream.range(0, zones.size())
                .filter(i -> i == 0 || !zones.get(i).equals(zones.get(i - 1)))
                .mapToObj(zones::get)
                .toList();
    }

    @Override
    public List<Snap> visit(Random random) {
        Camera camera = new Camera(Pace.OVERVIEW, habit.clockErrorSeconds(), random);
        walk(camera, firstLap, random);
        camera.pace(habit.pace());
        walk(camera, route, random);
        return camera.snaps();
    }

    private void walk(Camera camera, List<ZoneId> usual, Random random) {
        List<ZoneId> today = new ArrayList<>(usual);
        today.removeIf(zone -> random.nextDouble() < LEFT_OUT);
        for (int i = 0; i + 1 < today.size(); i++) {
            if (random.nextDouble() < CHANGE_PLACES) {
                Collections.swap(today, i, i + 1);
            }
        }
        for (int i = 0; i < today.size(); i++) {
            camera.stop(today.get(i));
            if (random.nextDouble() < habit.wander()) {
                List<ZoneId> whereTo = random.nextBoolean() ? today.subList(0, i + 1) : today;
                camera.stop(whereTo.get(random.nextInt(whereTo.size())));
            }
        }
    }
}
