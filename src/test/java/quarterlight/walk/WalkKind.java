package quarterlight.walk;

import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import quarterlight.car.ZoneId;

/** Kinds of simulated walks round a coupe: the one the method is written for, and others that break its assumptions. */
public enum WalkKind {
    /** From zone to zone next door by firm likings, about 4 a stop, pauses, one stop in 17 a detour or a return. */
    NEXT_DOOR,
    /** The same with looser likings: every tenth stop a detour or a return, another tenth anywhere next door. */
    LOOSE,
    /** A route of one's own, 4 to 9 a stop in bursts, with looks in between as long as a step. */
    BURSTS,
    /** Once round the outside quickly, then again in detail. */
    TWO_LAPS,
    /** A route with returns and detours at every fifth stop, and gaps of a heavy tail that say next to nothing. */
    WANDERING,
    /** A route with two cameras in turn at each stop, one clock up to 20 s off. */
    TWO_CAMERAS,
    /** All wheels, then all stamps, then all glass: a route by subject. */
    SUBJECTS,
    /** A route by where one stands, taking in few of the zones there: most moves skip what lies between. */
    STATIONS,
    /** {@link #TWO_LAPS} with 5 to 9 photos a stop in the second lap, as all that follow. */
    TWO_LAPS_THOROUGH,
    WANDERING_THOROUGH,
    TWO_CAMERAS_THOROUGH,
    SUBJECTS_THOROUGH,
    STATIONS_THOROUGH,
    /** The left one, then the right one, of each part in turn. */
    PAIRS;

    /** The share of stops that a thorough visit of as many photos has. */
    private static final double FEWER_STOPS = 4 / 7.0;

    /**
     * An inspector who walks this way, with habits drawn from the seed.
     *
     * @param photos about how many a visit
     * @param nextDoor to which zones a person comes in one step
     */
    public Walker inspector(int photos, Map<ZoneId, Set<ZoneId>> nextDoor, long seed) {
        Random habits = new Random(seed);
        return switch (this) {
            case NEXT_DOOR ->
                new NextDoorWalker(nextDoor, new NextDoorWalker.Habit(Pace.EVEN, photos, 0.95, 0.04, 0.02), habits);
            case LOOSE ->
                new NextDoorWalker(nextDoor, new NextDoorWalker.Habit(Pace.EVEN, photos, 0.9, 0.06, 0.04), habits);
            case BURSTS -> route(List.of(), stroll(nextDoor, photos * 4 / 6.5, habits), Pace.BURSTS, 0.06, 0);
            case TWO_LAPS -> laps(nextDoor, photos * 0.6, photos * 0.7, Pace.EVEN, habits);
            case TWO_LAPS_THOROUGH -> laps(nextDoor, photos * 0.3, photos * 0.9 * FEWER_STOPS, Pace.THOROUGH, habits);
            case WANDERING -> route(List.of(), stroll(nextDoor, photos * 0.9, habits), Pace.HEAVY_TAILED, 0.2, 0);
            case WANDERING_THOROUGH ->
                route(
                        List.of(),
                        stroll(nextDoor, photos * 0.9 * FEWER_STOPS, habits),
                        Pace.THOROUGH_HEAVY_TAILED,
                        0.2,
                        0);
            case TWO_CAMERAS -> route(List.of(), stroll(nextDoor, photos, habits), Pace.EVEN, 0.06, 20);
            case TWO_CAMERAS_THOROUGH ->
                route(List.of(), stroll(nextDoor, photos * FEWER_STOPS, habits), Pace.THOROUGH, 0.06, 20);
            case SUBJECTS -> listed("topics.txt", photos / 4, Pace.EVEN, habits);
            case SUBJECTS_THOROUGH -> listed("topics.txt", photos / 7, Pace.THOROUGH, habits);
            case STATIONS -> listed("stations.txt", photos / 4, Pace.EVEN, habits);
            case PAIRS -> listed("pairs.txt", photos / 4, Pace.EVEN, habits);
            case STATIONS_THOROUGH -> listed("stations.txt", photos / 7, Pace.THOROUGH, habits);
        };
    }

    private static Walker laps(
            Map<ZoneId, Set<ZoneId>> nextDoor, double outside, double all, Pace pace, Random habits) {
        return route(stroll(outside(nextDoor), outside, habits), stroll(nextDoor, all, habits), pace, 0.06, 0);
    }

    private static Walker listed(String file, int stops, Pace pace, Random habits) {
        return route(List.of(), RouteWalker.through(PlaceList.read(file), stops, habits), pace, 0.06, 0);
    }

    private static Walker route(List<ZoneId> lap, List<ZoneId> route, Pace pace, double wander, double error) {
        return new RouteWalker(lap, route, new RouteWalker.Habit(pace, wander, error));
    }

    /** A route by steps to zones next door, one move in ten to any zone; as long as {@code photos} at 4 a stop. */
    private static List<ZoneId> stroll(Map<ZoneId, Set<ZoneId>> nextDoor, double photos, Random habits) {
        NextDoorWalker.Habit habit = new NextDoorWalker.Habit(Pace.EVEN, (int) (photos * 1.08), 0.9, 0.1, 0);
        return RouteWalker.after(new NextDoorWalker(nextDoor, habit, habits), habits);
    }

    private static Map<ZoneId, Set<ZoneId>> outside(Map<ZoneId, Set<ZoneId>> nextDoor) {
        Set<ZoneId> outer = PlaceList.read("stations.txt").stream()
                .skip(1)
                .limit(8)
                .flatMap(List::stream)
                .collect(java.util.stream.Collectors.toSet());
        Map<ZoneId, Set<ZoneId>> steps = new java.util.HashMap<>();
        outer.forEach(zone -> steps.put(
                zone,
                Stream.ofNullable(nextDoor.get(zone))
                        .flatMap(Set::stream)
                        .filter(outer::contains)
                        .collect(java.util.stream.Collectors.toSet())));
        return steps;
    }
}
