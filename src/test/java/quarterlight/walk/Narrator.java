package quarterlight.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import quarterlight.car.ZoneId;
import quarterlight.walk.said.PlaceSaid;

/**
 * Speaks along with a simulated walk, with the slips that drafts of narrated walks have: not every stop is spoken of, some words come early or late, the clock
 * of the recording is off, and of ten places that are heard two are wrong (docs/performance.md has 85 to 89 of 100 right in kind and place).
 */
final class Narrator {
    private static final double EARLY_S = 4;
    private static final double LATE_S = 6;
    private static final double CLOCK_S = 2;
    private static final double RIGHT = 0.8;
    private static final double OTHER_SIDE = 0.08;
    private static final double NEXT_DOOR = 0.06;

    private final WalkScores.Place place;
    private final double spokenOf;
    private final double again;
    private final Random random;

    /**
     * One who speaks so much.
     *
     * @param spokenOf share of the stops that are spoken of
     * @param again share of these that are spoken of twice
     */
    Narrator(WalkScores.Place place, double spokenOf, double again, long seed) {
        this.place = place;
        this.spokenOf = spokenOf;
        this.again = again;
        this.random = new Random(seed);
    }

    List<PlaceSaid> says(List<Snap> snaps) {
        double clock = CLOCK_S * random.nextGaussian();
        List<PlaceSaid> said = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= snaps.size(); i++) {
            if (i < snaps.size() && snaps.get(i).zone().equals(snaps.get(from).zone())) {
                continue;
            }
            if (random.nextDouble() < spokenOf) {
                said.add(says(snaps.get(from), snaps.get(i - 1), clock));
                if (random.nextDouble() < again) {
                    said.add(says(snaps.get(from), snaps.get(i - 1), clock));
                }
            }
            from = i;
        }
        return said;
    }

    private PlaceSaid says(Snap first, Snap last, double clock) {
        double begin = first.seconds() - EARLY_S;
        double end = last.seconds() + LATE_S;
        return new PlaceSaid(begin + (end - begin) * random.nextDouble() + clock, List.of(heard(first.zone())), 1);
    }

    private ZoneId heard(ZoneId zone) {
        double dice = random.nextDouble();
        if (dice < RIGHT) {
            return zone;
        }
        Map<ZoneId, ZoneId> mirrors = place.kin().mirrors();
        if (dice < RIGHT + OTHER_SIDE && mirrors.containsKey(zone)) {
            return mirrors.get(zone);
        }
        List<ZoneId> near =
                place.nextDoor().getOrDefault(zone, Set.of()).stream().sorted().toList();
        return dice < RIGHT + OTHER_SIDE + NEXT_DOOR && !near.isEmpty()
                ? near.get(random.nextInt(near.size()))
                : place.zones().get(random.nextInt(place.zones().size()));
    }
}
