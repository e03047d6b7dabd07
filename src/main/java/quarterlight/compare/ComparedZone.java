package quarterlight.compare;

import java.util.List;
import java.util.Objects;
import quarterlight.car.Zone;

/**
 * A zone that both cars have.
 *
 * @param contrasts what is worth saying, in the order of {@link Aspect}; none if the cars do not differ beyond their
 *     uncertainty and neither lacks what the other has
 */
public record ComparedZone(Zone zone, ZoneFacts a, ZoneFacts b, List<Contrast> contrasts) {
    public ComparedZone {
        Objects.requireNonNull(zone, "zone");
        Objects.requireNonNull(a, "a");
        Objects.requireNonNull(b, "b");
        contrasts = List.copyOf(contrasts);
    }
}
