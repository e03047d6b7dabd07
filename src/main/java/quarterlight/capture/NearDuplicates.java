package quarterlight.capture;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import quarterlight.visit.photo.CameraId;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;

/**
 * Photos that look alike: each is close to another of its set by difference hash. A hint; the inspector decides, nothing is removed.
 *
 * @param sets the sets of two or more photos, each in order of ids
 * @param nearest for each photo in a set, its closest one and the distance
 */
public record NearDuplicates(List<List<PhotoId>> sets, Map<PhotoId, Match> nearest) {
    public static final NearDuplicates NONE = new NearDuplicates(List.of(), Map.of());

    /** Krawetz: up to 10 of 64 bits a variation. */
    public static final int CLOSE = 10;

    /** Judgement: one shows the same thing twice within this time, also with another camera. */
    public static final Duration ONE_MOMENT = Duration.ofMinutes(10);

    /** A visit lasts a day at most. */
    private static final Duration ONE_DAY = Duration.ofDays(1);

    /** Another photo and how many of 64 bits differ. */
    public record Match(PhotoId photo, int distance) {}

    public NearDuplicates {
        sets = List.copyOf(sets);
        nearest = Map.copyOf(nearest);
    }

    /**
     * The photos of a visit that look alike. Two count only if they can be of one moment: by one camera within a day, or by any
     * cameras within {@link #ONE_MOMENT}; where a time is not known, by one camera. Pictures that chance makes alike, years
     * apart, do not.
     */
    public static NearDuplicates of(List<Photo> photos, CorrectedTimes times, Map<PhotoId, DifferenceHash> hashes) {
        Map<PhotoId, Optional<CameraId>> cameras = new HashMap<>();
        photos.forEach(photo -> cameras.put(photo.id(), photo.file().camera()));
        return of(hashes, (a, b) -> {
            Optional<CameraId> camera = cameras.getOrDefault(a, Optional.empty());
            boolean oneCamera = camera.isPresent() && camera.equals(cameras.get(b));
            Optional<Instant> first = times.of(a).map(time -> time.utc().toInstant());
            Optional<Instant> second = times.of(b).map(time -> time.utc().toInstant());
            if (first.isEmpty() || second.isEmpty()) {
                return oneCamera;
            }
            Duration apart = Duration.between(first.get(), second.get()).abs();
            return apart.compareTo(oneCamera ? ONE_DAY : ONE_MOMENT) <= 0;
        });
    }

    /** Those that are alike to another one that counts; the same if all count. */
    public NearDuplicates among(Predicate<PhotoId> counts) {
        if (nearest.keySet().stream().allMatch(counts)) {
            return this;
        }
        List<List<PhotoId>> left = new ArrayList<>();
        Map<PhotoId, Match> matches = new TreeMap<>();
        for (List<PhotoId> set : sets) {
            List<PhotoId> rest = set.stream().filter(counts).toList();
            if (rest.size() > 1) {
                left.add(rest);
                rest.forEach(id -> matches.put(id, nearest.get(id)));
            }
        }
        return new NearDuplicates(left, matches);
    }

    /** @param together whether two photos can be of one moment; of every pair, about 10 ms for 1,000 photos */
    static NearDuplicates of(Map<PhotoId, DifferenceHash> hashes, BiPredicate<PhotoId, PhotoId> together) {
        List<PhotoId> ids = hashes.keySet().stream().sorted().toList();
        long[] bits = ids.stream().mapToLong(id -> hashes.get(id).bits()).toArray();
        int[] head = new int[bits.length];
        Map<PhotoId, Match> nearest = new TreeMap<>();
        for (int i = 0; i < bits.length; i++) {
            head[i] = i;
        }
        for (int i = 0; i < bits.length; i++) {
            for (int j = i + 1; j < bits.length; j++) {
                int distance = Long.bitCount(bits[i] ^ bits[j]);
                if (distance <= CLOSE && together.test(ids.get(i), ids.get(j))) {
                    join(head, i, j);
                    keepNearer(nearest, ids.get(i), new Match(ids.get(j), distance));
                    keepNearer(nearest, ids.get(j), new Match(ids.get(i), distance));
                }
            }
        }
        Map<Integer, List<PhotoId>> sets = new TreeMap<>();
        for (int i = 0; i < bits.length; i++) {
            sets.computeIfAbsent(root(head, i), h -> new ArrayList<>()).add(ids.get(i));
        }
        return new NearDuplicates(
                sets.values().stream()
                        .filter(set -> set.size() > 1)
                        .map(List::copyOf)
                        .toList(),
                nearest);
    }

    private static void keepNearer(Map<PhotoId, Match> nearest, PhotoId photo, Match match) {
        nearest.merge(photo, match, (old, found) -> found.distance() < old.distance() ? found : old);
    }

    private static void join(int[] head, int a, int b) {
        int first = root(head, a);
        int second = root(head, b);
        head[Math.max(first, second)] = Math.min(first, second);
    }

    private static int root(int[] head, int at) {
        int found = at;
        while (head[found] != found) {
            head[found] = head[head[found]];
            found = head[found];
        }
        return found;
    }
}
