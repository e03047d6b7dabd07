package quarterlight.capture;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The offset from UTC at which a camera's clock was set, from its recorded times against the satellite times of the same photos.
 * <p>Each photo votes for the offset in use on earth that is nearest to its difference; the offset with most votes wins, so that a stale
 * fix (which makes single differences larger) does not count. A difference out of the range of offsets by whole days is brought into it,
 * since some cameras date the satellite time a day off. Of offsets with equal votes the one with the smaller remainder wins, then the smaller
 * one. What remains is drift: the middle of the remainders of the photos that agree.
 * <p>Source: Exif GPSTimeStamp and GPSDateStamp are UTC (CIPA DC-008); offsets in use since 2000 from the tz database. The voting is our own.
 *
 * @param drift recorded time less satellite time less offset; positive if the clock runs ahead
 * @param compared photos that have both times
 * @param agreeing photos that voted for this offset
 */
public record SatelliteOffset(ZoneOffset offset, Duration drift, int compared, int agreeing) {
    private static final long DAY = 86_400_000;
    private static final long QUARTER = 900_000;
    /** Offsets in use, in quarters of an hour. */
    private static final int[] IN_USE = inUse();

    /** A photo's two times: as recorded by the clock, and by satellite. */
    public record Pair(LocalDateTime recorded, LocalDateTime satelliteUtc) {}

    /** Empty if there are no pairs. */
    public static Optional<SatelliteOffset> of(List<Pair> pairs) {
        if (pairs.isEmpty()) {
            return Optional.empty();
        }
        Map<Integer, List<Long>> remainders = new TreeMap<>();
        for (Pair pair : pairs) {
            long millis = folded(
                    Duration.between(pair.satelliteUtc(), pair.recorded()).toMillis());
            int quarters = nearest(millis);
            remainders.computeIfAbsent(quarters, q -> new ArrayList<>()).add(millis - quarters * QUARTER);
        }
        Comparator<Map.Entry<Integer, List<Long>>> best = Comparator.comparingInt(
                        (Map.Entry<Integer, List<Long>> vote) ->
                                -vote.getValue().size())
                .thenComparingLong(vote -> Math.abs(middle(vote.getValue())))
                .thenComparingInt(Map.Entry::getKey);
        Map.Entry<Integer, List<Long>> won = Collections.min(remainders.entrySet(), best);
        return Optional.of(new SatelliteOffset(
                ZoneOffset.ofTotalSeconds(won.getKey() * 900),
                Duration.ofMillis(middle(won.getValue())),
                pairs.size(),
                won.getValue().size()));
    }

    /** The drift that a known offset leaves, over pairs within half an hour of it; empty if there are none. */
    static Optional<Duration> drift(List<Pair> pairs, ZoneOffset known) {
        List<Long> remainders = pairs.stream()
                .map(pair -> folded(
                        Duration.between(pair.satelliteUtc(), pair.recorded()).toMillis()
                                - known.getTotalSeconds() * 1000L))
                .filter(millis -> Math.abs(millis) <= 2 * QUARTER)
                .toList();
        return remainders.isEmpty() ? Optional.empty() : Optional.of(Duration.ofMillis(middle(remainders)));
    }

    /** By whole days into the range of offsets, if out of it by more than half an hour. */
    private static long folded(long millis) {
        long low = (IN_USE[0] - 2) * QUARTER;
        long high = (IN_USE[IN_USE.length - 1] + 2) * QUARTER;
        if (millis >= low && millis <= high) {
            return millis;
        }
        return Math.floorMod(millis + DAY / 2, DAY) - DAY / 2;
    }

    private static int nearest(long millis) {
        return Arrays.stream(IN_USE)
                .boxed()
                .min(Comparator.comparingLong(quarters -> Math.abs(millis - quarters * QUARTER)))
                .orElse(0);
    }

    private static long middle(List<Long> values) {
        List<Long> sorted = values.stream().sorted().toList();
        int half = sorted.size() / 2;
        return sorted.size() % 2 == 1 ? sorted.get(half) : Math.floorDiv(sorted.get(half - 1) + sorted.get(half), 2L);
    }

    private static int[] inUse() {
        List<Integer> quarters = new ArrayList<>(
                // -9:30 -4:30 -3:30 -2:30, 3:30 4:30 5:30 5:45 6:30 8:30 8:45 9:30 9:45 10:30 11:30 12:45 13:45
                List.of(-38, -18, -14, -10, 14, 18, 22, 23, 26, 34, 35, 38, 39, 42, 46, 51, 55));
        for (int hours = -12; hours <= 14; hours++) {
            quarters.add(hours * 4);
        }
        return quarters.stream().mapToInt(Integer::intValue).sorted().toArray();
    }
}
