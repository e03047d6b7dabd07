package quarterlight.compare;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quarterlight.car.Zone;
import quarterlight.compare.place.Place;

/**
 * A zone of one car beside the zone of the other that is the same place; or a zone that the other does not have.
 *
 * @param place where on both cars
 * @param zoneA the zone of A; empty if A has none there
 * @param a what is known of it; empty if A has none there
 * @param contrasts what is worth saying, in the order of {@link Aspect}; none if the cars do not differ beyond their
 *     uncertainty and neither lacks what the other has
 */
public record ComparedZone(
        Place place,
        Optional<Zone> zoneA,
        Optional<Zone> zoneB,
        Optional<ZoneFacts> a,
        Optional<ZoneFacts> b,
        List<Contrast> contrasts) {
    public ComparedZone {
        Objects.requireNonNull(place, "place");
        contrasts = List.copyOf(contrasts);
        if (zoneA.isPresent() != a.isPresent()
                || zoneB.isPresent() != b.isPresent()
                || zoneA.isEmpty() && zoneB.isEmpty()) {
            throw new IllegalArgumentException("a zone of a car has facts, and one car at least has it");
        }
    }

    /** Whether both cars have it. */
    public boolean isShared() {
        return zoneA.isPresent() && zoneB.isPresent();
    }

    /** The zone of A, else that of B. */
    public Zone zone() {
        return zoneA.or(() -> zoneB).orElseThrow();
    }

    /** Its name: that of the zone if both have the same, else both names. */
    public String label() {
        return isShared() && !zoneA.equals(zoneB)
                ? zoneA.get().label() + " / " + zoneB.get().label()
                : zone().label();
    }

    /** What is known on one side. */
    public Optional<ZoneFacts> on(Side side) {
        return side == Side.A ? a : b;
    }
}
