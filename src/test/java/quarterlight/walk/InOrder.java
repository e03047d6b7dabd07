package quarterlight.walk;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import quarterlight.car.ZoneId;
import quarterlight.visit.photo.PhotoId;

/**
 * How often the true zone of the next photo is among the first three when photos are pinned one after the other, from the
 * moment on when two steps to a zone of the same kind (or its mirror) were pinned.
 *
 * @param photos how many photos were asked for
 * @param firstThree share of them
 * @param stops how many of them were the first of a new stop
 * @param firstThreeOfStops share of those
 */
record InOrder(int photos, double firstThree, int stops, double firstThreeOfStops) {
    static InOrder of(WalkKind kind, int inspectors, long seed, WalkScores.Place place) {
        int[] count = new int[4];
        for (int i = 0; i < inspectors; i++) {
            List<Snap> snaps = kind.inspector(220, place.nextDoor(), seed + i).visit(new Random(1000 + seed + i));
            visit(snaps, place, count);
        }
        return new InOrder(count[0], (double) count[1] / count[0], count[2], (double) count[3] / count[2]);
    }

    private static void visit(List<Snap> snaps, WalkScores.Place place, int[] count) {
        WalkLine line = place.suggestions(WalkHabits.NONE)
                .line(IntStream.range(0, snaps.size())
                        .mapToObj(
                                i -> new Shot(new PhotoId(i + 1L), snaps.get(i).seconds(), List.of(), Optional.empty()))
                        .toList());
        Map<PhotoId, List<ZoneId>> pins = new HashMap<>();
        int steps = 0;
        for (int i = 0; i < snaps.size(); i++) {
            ZoneId zone = snaps.get(i).zone();
            boolean moved = i > 0 && !zone.equals(snaps.get(i - 1).zone());
            if (steps >= 2) {
                boolean hit = line.suggestions(new PhotoId(i + 1L)).stream()
                        .limit(3)
                        .anyMatch(suggestion -> suggestion.zone().equals(zone));
                count[0]++;
                count[1] += hit ? 1 : 0;
                count[2] += moved ? 1 : 0;
                count[3] += moved && hit ? 1 : 0;
            }
            if (moved && place.kin().kinds().get(snaps.get(i - 1).zone()).containsKey(zone)) {
                steps++;
            }
            pins.put(new PhotoId(i + 1L), List.of(zone));
            line.pins(pins);
        }
    }
}
