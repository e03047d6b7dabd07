package quarterlight.walk;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quarterlight.car.ZoneId;
import quarterlight.visit.photo.PhotoId;

/**
 * One photo on the walk's time line.
 *
 * @param seconds corrected capture time, seconds from any fixed moment
 * @param pinned the zones it is pinned to, in the order of the pins; empty if not pinned
 * @param twinOf an earlier photo of which it is a near-duplicate
 */
public record Shot(PhotoId photo, double seconds, List<ZoneId> pinned, Optional<PhotoId> twinOf) {
    public Shot {
        Objects.requireNonNull(photo, "photo");
        Objects.requireNonNull(twinOf, "twinOf");
        pinned = List.copyOf(pinned);
        if (!Double.isFinite(seconds)) {
            throw new IllegalArgumentException("a photo on the time line has a time");
        }
    }
}
