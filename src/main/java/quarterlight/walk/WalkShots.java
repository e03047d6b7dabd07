package quarterlight.walk;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import quarterlight.capture.CorrectedTimes;
import quarterlight.car.ZoneId;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.pin.Recorded;

/** The photos of a visit as a walk: those that have a time and are not set aside, all cameras on one time line. */
public final class WalkShots {
    private static final double MILLIS = 1000;

    private WalkShots() {}

    private record Timed(Photo photo, Instant at) {}

    /**
     * @param alike sets of photos that look alike; the first of a set in time is what the others are twins of
     * @return in the order of time
     */
    public static List<Shot> of(VisitRecord visit, List<List<PhotoId>> alike) {
        Map<PhotoId, List<ZoneId>> pins = pins(visit);
        Map<PhotoId, Integer> setOf = new HashMap<>();
        for (int i = 0; i < alike.size(); i++) {
            for (PhotoId photo : alike.get(i)) {
                setOf.put(photo, i);
            }
        }
        Map<Integer, PhotoId> firstOfSet = new HashMap<>();
        List<Timed> timed = timed(visit);
        List<Shot> shots = new ArrayList<>();
        for (Timed one : timed) {
            PhotoId id = one.photo().id();
            Optional<PhotoId> twin = Optional.ofNullable(setOf.get(id)).map(firstOfSet::get);
            Optional.ofNullable(setOf.get(id)).ifPresent(set -> firstOfSet.putIfAbsent(set, id));
            shots.add(new Shot(id, seconds(timed, one), pins.getOrDefault(id, List.of()), twin));
        }
        return shots;
    }

    /** When the time line of the walk begins: with its first photo. */
    public static Optional<Instant> start(VisitRecord visit) {
        return timed(visit).stream().findFirst().map(Timed::at);
    }

    /** The zones of each pinned photo, each once, in the order of the pins. */
    public static Map<PhotoId, List<ZoneId>> pins(VisitRecord visit) {
        Map<PhotoId, Set<ZoneId>> zones = new TreeMap<>();
        for (Recorded<Pin> pin : visit.pins()) {
            zones.computeIfAbsent(pin.value().photo(), id -> new LinkedHashSet<>())
                    .add(pin.value().zone());
        }
        Map<PhotoId, List<ZoneId>> pins = new HashMap<>();
        zones.forEach((photo, list) -> pins.put(photo, List.copyOf(list)));
        return pins;
    }

    /** The walk as it may be remembered. A photo that is there twice counts once. */
    public static PastWalk remembered(VisitRecord visit) {
        Map<PhotoId, List<ZoneId>> pins = pins(visit);
        List<Timed> timed = timed(visit);
        Set<String> seen = new HashSet<>();
        List<PastWalk.Moment> moments = new ArrayList<>();
        for (Timed one : timed) {
            String digest = one.photo().file().sha256().prefix();
            if (seen.add(digest)) {
                moments.add(new PastWalk.Moment(
                        digest,
                        seconds(timed, one),
                        pins.getOrDefault(one.photo().id(), List.of())));
            }
        }
        return new PastWalk(visit.facts().car().body().style(), moments);
    }

    private static List<Timed> timed(VisitRecord visit) {
        CorrectedTimes times = CorrectedTimes.of(visit);
        return visit.photos().stream()
                .filter(photo -> photo.setAside().isEmpty())
                .filter(photo -> photo.file().kind().isCameras())
                .flatMap(photo -> times.of(photo.id()).stream()
                        .map(time -> new Timed(photo, time.utc().toInstant())))
                .sorted(java.util.Comparator.comparing(Timed::at)
                        .thenComparing(one -> one.photo().id()))
                .toList();
    }

    private static double seconds(List<Timed> timed, Timed one) {
        return java.time.Duration.between(timed.get(0).at(), one.at()).toMillis() / MILLIS;
    }
}
