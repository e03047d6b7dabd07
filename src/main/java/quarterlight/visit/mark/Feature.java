package quarterlight.visit.mark;

import java.util.Objects;
import java.util.Optional;
import quarterlight.car.PartialDate;
import quarterlight.car.ZoneId;

/**
 * A feature that cars built in a certain range of dates have.
 *
 * @param fitted whether this car has it, if that was seen
 */
public record Feature(
        String feature,
        PartialDate from,
        PartialDate to,
        Optional<Boolean> fitted,
        Optional<ZoneId> zone,
        Optional<String> note) {
    public Feature {
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
        if (feature.isBlank()) {
            throw new IllegalArgumentException("a feature has a name");
        }
    }
}
