package quarterlight.findings;

import java.util.Objects;
import java.util.Optional;
import quarterlight.car.ZoneId;

/**
 * A mark or a feature that does not go with the rest of the car.
 *
 * @param part what bears it
 * @param kind how it contradicts
 * @param why one sentence, with what was read and what was expected
 * @param zone where it stands, if known
 */
public record Contradiction(String part, Kind kind, String why, Optional<ZoneId> zone) {
    /** How a mark contradicts, from most to least. */
    public enum Kind {
        /** A number that says which car it is differs from what it should be, or breaks the rule of its kind. */
        IDENTITY,
        /** A part made after the car, or a feature of later cars. */
        TOO_LATE,
        /** A part made longer before the car than parts usually lie, or a feature of earlier cars. */
        UNUSUALLY_EARLY
    }

    public Contradiction {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(why, "why");
        Objects.requireNonNull(zone, "zone");
        if (part.isBlank()) {
            throw new IllegalArgumentException("a contradiction names the part");
        }
    }
}
