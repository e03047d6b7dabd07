package quarterlight.walk;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import quarterlight.car.ZoneId;
import quarterlight.car.body.BodyStyle;
import quarterlight.visit.photo.PhotoId;

/**
 * The walk of one visit as it is remembered: when each photo was taken and to which zones it was pinned, by digests of the photos and
 * nothing else of the car or the client. Immutable.
 * <p>Two walks are the same visit if at least half of the photos of the smaller are in both: wherever the folder lies, whatever was taken in
 * since, and though a photo of the gauge's papers may be in every visit.
 *
 * @param photos in any order
 */
public record PastWalk(BodyStyle style, List<Moment> photos) {
    /**
     * One photo.
     *
     * @param digest the first digits of its SHA-256
     * @param seconds corrected capture time, seconds from any fixed moment of the visit
     * @param pinned the zones it is pinned to, in the order of the pins; empty if not pinned
     */
    public record Moment(String digest, double seconds, List<ZoneId> pinned) {
        public Moment {
            if (!digest.matches("[0-9a-f]{12}") || !Double.isFinite(seconds)) {
                throw new IllegalArgumentException("a remembered photo has twelve digits of its digest and a time");
            }
            pinned = List.copyOf(pinned);
        }
    }

    public PastWalk {
        Objects.requireNonNull(style, "style");
        photos = List.copyOf(photos);
    }

    public boolean sameVisit(PastWalk other) {
        Set<String> own = new HashSet<>();
        photos.forEach(photo -> own.add(photo.digest()));
        long shared =
                other.photos.stream().map(Moment::digest).filter(own::contains).count();
        return shared > 0 && 2 * shared >= Math.min(photos.size(), other.photos.size());
    }

    /** True if it tells nothing: no two photos are pinned. */
    public boolean tellsNothing() {
        return photos.stream().filter(photo -> !photo.pinned().isEmpty()).count() < 2;
    }

    public WalkHabits habits() {
        List<Shot> shots = new ArrayList<>();
        for (int i = 0; i < photos.size(); i++) {
            Moment photo = photos.get(i);
            shots.add(new Shot(new PhotoId(i + 1L), photo.seconds(), photo.pinned(), Optional.empty()));
        }
        return WalkHabits.of(shots);
    }

    /**
     * The habits of the user's earlier visits for a visit at hand, which does not count itself: those with cars of its style, or of all styles as
     * long as there is none of its own.
     */
    public static WalkHabits habitsFor(PastWalk atHand, List<PastWalk> earlier) {
        List<PastWalk> others =
                earlier.stream().filter(walk -> !walk.sameVisit(atHand)).toList();
        List<PastWalk> sameStyle =
                others.stream().filter(walk -> walk.style() == atHand.style()).toList();
        return (sameStyle.isEmpty() ? others : sameStyle)
                .stream().map(PastWalk::habits).reduce(WalkHabits.NONE, WalkHabits::plus);
    }
}
