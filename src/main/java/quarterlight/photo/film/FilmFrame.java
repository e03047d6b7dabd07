package quarterlight.photo.film;

import java.awt.image.BufferedImage;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * One frame of a film, upright, in sRGB.
 *
 * @param picture {@link BufferedImage#TYPE_INT_RGB}
 * @param seconds when it begins, from the film's beginning
 * @param durationSeconds how long it is shown, above 0
 * @param last whether no frame follows
 */
public record FilmFrame(BufferedImage picture, double seconds, double durationSeconds, boolean last) {
    public FilmFrame {
        Objects.requireNonNull(picture, "picture");
        if (!(seconds >= 0) || !(durationSeconds > 0)) {
            throw new IllegalArgumentException("a frame has a time and a duration");
        }
    }

    /** A moment within the next frame, if there is one. */
    public OptionalDouble next() {
        return last ? OptionalDouble.empty() : OptionalDouble.of(seconds + durationSeconds + FilmFrames.TOLERANCE_S);
    }

    /** A moment within the frame before, if there is one. */
    public OptionalDouble previous() {
        return seconds <= FilmFrames.TOLERANCE_S
                ? OptionalDouble.empty()
                : OptionalDouble.of(seconds - 2 * FilmFrames.TOLERANCE_S);
    }
}
