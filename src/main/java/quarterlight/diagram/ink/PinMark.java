package quarterlight.diagram.ink;

import java.util.Objects;
import quarterlight.visit.pin.ViewPoint;

/**
 * A numbered pin.
 *
 * @param number shown in its disc, 1 or more
 * @param point the exact point it stands for; for a pin without one take the zone's own from {@code ZonePlaces}
 */
public record PinMark(int number, ViewPoint point) {
    public PinMark {
        Objects.requireNonNull(point, "point");
        if (number < 1) {
            throw new IllegalArgumentException("pins are numbered from 1, not " + number);
        }
    }
}
