package quarterlight.visit.pin;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import quarterlight.car.ZoneId;
import quarterlight.visit.photo.PhotoId;

/**
 * A photo (or film moment) tied to a zone, and to a point in a view if one was given.
 *
 * @param at seconds into a film
 * @param shows what it shows, in a few trade words
 * @param mark the part whose mark it shows
 */
public record Pin(
        PhotoId photo,
        ZoneId zone,
        OptionalDouble at,
        Optional<ViewPoint> point,
        Optional<String> shows,
        Optional<String> caption,
        Optional<String> mark) {
    public Pin {
        Objects.requireNonNull(photo, "photo");
        Objects.requireNonNull(zone, "zone");
        if (at.isPresent() && !(at.getAsDouble() >= 0 && Double.isFinite(at.getAsDouble()))) {
            throw new IllegalArgumentException("a moment of a film is 0 s or later");
        }
    }
}
