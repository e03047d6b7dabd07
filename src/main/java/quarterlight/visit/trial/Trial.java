package quarterlight.visit.trial;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;
import quarterlight.car.ZoneId;

/**
 * What was tried on the car and what came of it, with a value in its unit if one was measured.
 *
 * @param confidential whether it never leaves in anything made for the buyer
 */
public record Trial(
        String item,
        TrialResult result,
        Optional<BigDecimal> value,
        Optional<String> unit,
        Optional<ZoneId> zone,
        Optional<String> note,
        boolean confidential) {
    public Trial {
        Objects.requireNonNull(result, "result");
        if (item.isBlank()) {
            throw new IllegalArgumentException("a trial names what was tried");
        }
    }

    /** A trial that everybody may see. */
    public Trial(
            String item,
            TrialResult result,
            Optional<BigDecimal> value,
            Optional<String> unit,
            Optional<ZoneId> zone,
            Optional<String> note) {
        this(item, result, value, unit, zone, note, false);
    }
}
