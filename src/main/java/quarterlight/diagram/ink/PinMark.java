package quarterlight.diagram.ink;

import java.util.Objects;
import quarterlight.visit.pin.ViewPoint;

/**
 * A numbered pin.
 *
 * @param number shown in its disc: that of its photo
 * @param point the exact point it stands for; for a pin without one take the zone's own from {@code ZonePlaces}
 */
public record PinMark(String number, ViewPoint point) {
    public PinMark {
        Objects.requireNonNull(number, "number");
        Objects.requireNonNull(point, "point");
        if (number.isBlank()) {
            throw new IllegalArgumentException("a pin bears the number of its photo");
        }
    }
}
