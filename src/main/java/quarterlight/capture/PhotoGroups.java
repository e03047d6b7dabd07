package quarterlight.capture;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.PhotoId;

/**
 * Photos that belong together since no longer pause lies between them, over all cameras on one time line.
 * <p>Groups are numbered from 1 in the order of time. A photo without a time is in no group.
 */
public final class PhotoGroups {
    /** Common practice, without a source: moving on to another part of the car takes longer than this. */
    public static final Duration PAUSE = Duration.ofSeconds(60);

    private final Map<PhotoId, Integer> groups;

    private PhotoGroups(Map<PhotoId, Integer> groups) {
        this.groups = groups;
    }

    public static PhotoGroups of(VisitRecord visit, CorrectedTimes times) {
        return of(visit, times, PAUSE);
    }

    /** @param pause a gap longer than this begins a new group */
    public static PhotoGroups of(VisitRecord visit, CorrectedTimes times, Duration pause) {
        record Shot(PhotoId id, Instant at) {}
        List<Shot> shots = visit.photos().stream()
                .flatMap(photo -> times.of(photo.id()).stream()
                        .map(time -> new Shot(photo.id(), time.utc().toInstant())))
                .sorted(Comparator.comparing(Shot::at).thenComparing(Shot::id))
                .toList();
        Map<PhotoId, Integer> groups = new LinkedHashMap<>();
        int group = 0;
        Optional<Instant> before = Optional.empty();
        for (Shot shot : shots) {
            boolean moved = before.map(at -> Duration.between(at, shot.at()).compareTo(pause) > 0)
                    .orElse(true);
            group += moved ? 1 : 0;
            groups.put(shot.id(), group);
            before = Optional.of(shot.at());
        }
        return new PhotoGroups(groups);
    }

    /** The photo's group, from 1; empty if the photo has no time. */
    public Optional<Integer> of(PhotoId photo) {
        return Optional.ofNullable(groups.get(photo));
    }

    public int count() {
        return groups.values().stream().mapToInt(Integer::intValue).max().orElse(0);
    }
}
