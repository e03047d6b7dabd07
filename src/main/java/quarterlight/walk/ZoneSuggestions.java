package quarterlight.walk;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import quarterlight.car.ZoneId;
import quarterlight.visit.photo.PhotoId;
import quarterlight.walk.pace.GapCounts;
import quarterlight.walk.said.PlaceSaid;
import quarterlight.walk.said.SaidPlaces;

/**
 * Likely zones of photos that are not pinned yet, from the pinned photos around them in time and from what was said then.
 * <p>The walker stays at a zone for some photos, then moves to a zone next door, seldom to any; the chance of a move rises with the gap
 * against the visit's usual gap, and is smaller right after the first photo of a stop. Pinned photos are observations. How many photos a stop
 * has and how often the walker leaves the neighborhood is not known: a few values of each run side by side ({@link WalkModel}), and the
 * pins decide. Habits of earlier visits sharpen where a move goes and how a gap tells of it. Immutable.
 */
public final class ZoneSuggestions {
    private final List<ZoneId> zones;
    private final List<JumpMatrix> jumps;
    private final GapCounts gaps;
    private final WalkModel model;
    private final ZoneKin kin;
    private final UsualWalk usual;

    /**
     * The usual way round a car, for one of whose own way nothing is known: of zones that are as likely, those that come soon after the last one pinned
     * go first. Common practice; how much it counts is judgement, tried on the sample visits and on simulated walks. Immutable.
     *
     * @param places the place of each zone on the way
     */
    record UsualWalk(Map<ZoneId, Integer> places) {
        private static final double WEIGHT = 3;
        private static final double STEPS = 10;
        /** A step back counts as two on. */
        private static final int BACK = 2;

        UsualWalk {
            places = Map.copyOf(places);
        }

        static UsualWalk of(List<ZoneId> order) {
            Map<ZoneId, Integer> places = new HashMap<>();
            order.forEach(zone -> places.putIfAbsent(zone, places.size()));
            return new UsualWalk(places);
        }

        /** How much likelier a zone is after another one than without knowing of the usual way; at least 1. */
        double factor(ZoneId from, ZoneId to) {
            if (!places.containsKey(from) || !places.containsKey(to)) {
                return 1;
            }
            int steps = places.get(to) - places.get(from);
            return 1 + WEIGHT * Math.exp((steps < 0 ? BACK * steps : -steps) / STEPS);
        }
    }

    /**
     * @param zones the car's zones
     * @param nextDoor which zones are next to each zone
     * @param kin which zones are of a kind
     * @param habits what earlier visits tell
     */
    public ZoneSuggestions(
            List<ZoneId> zones, Map<ZoneId, Set<ZoneId>> nextDoor, ZoneKin kin, WalkHabits habits, WalkModel model) {
        this.zones = List.copyOf(zones);
        this.model = Objects.requireNonNull(model, "model");
        this.kin = Objects.requireNonNull(kin, "kin");
        gaps = habits.gaps();
        JumpMatrix.Ways ways = JumpMatrix.Ways.of(this.zones, nextDoor, kin, habits, model);
        jumps = model.moves().stream().map(moves -> new JumpMatrix(ways, moves)).toList();
        usual = UsualWalk.of(List.of());
    }

    private ZoneSuggestions(ZoneSuggestions other, UsualWalk usual) {
        zones = other.zones;
        jumps = other.jumps;
        gaps = other.gaps;
        model = other.model;
        kin = other.kin;
        this.usual = usual;
    }

    /** The same with the usual way round a car, which counts as long as no earlier visit is known. */
    public ZoneSuggestions along(List<ZoneId> order) {
        return new ZoneSuggestions(this, UsualWalk.of(order));
    }

    /**
     * At most 24 suggestions for each shot that is not pinned, best first; none if nothing is pinned at all.
     *
     * @param shots in any order; those of all cameras together
     */
    public Map<PhotoId, List<Suggestion>> suggest(List<Shot> shots) {
        return suggest(shots, List.of());
    }

    /**
     * The same with what was said on the walk; none if nothing is pinned and nothing was said.
     *
     * @param said in any order
     */
    public Map<PhotoId, List<Suggestion>> suggest(List<Shot> shots, List<PlaceSaid> said) {
        return line(shots, said).suggestions();
    }

    /** A time line whose suggestions follow the pins as they are made. */
    public WalkLine line(List<Shot> shots) {
        return line(shots, List.of());
    }

    /** The same with what was said on the walk. */
    public WalkLine line(List<Shot> shots, List<PlaceSaid> said) {
        return new WalkLine(zones, jumps, gaps, model, usual, shots, times -> new SaidPlaces(zones, kin, said, times));
    }
}
