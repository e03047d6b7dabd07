package quarterlight.visit;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;
import quarterlight.car.ZoneId;

/** A function of the car and how it behaved, with a value in its unit if one was measured. */
public record Trial(
        String item,
        TrialResult result,
        Optional<BigDecimal> value,
        Optional<String> unit,
        Optional<ZoneId> zone,
        Optional<String> note) {
    public Trial {
        Objects.requireNonNull(result, "result");
        if (item.isBlank()) {
            throw new IllegalArgumentException("a trial names what was tried");
        }
    }
}
