package quarterlight.coverage;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;

/**
 * What a measured value is held against, in the unit of its item.
 *
 * @param least below it the value is too low
 * @param most above it the value is too high
 * @param source a standard or rule by name, or common practice
 */
public record MeasureLimit(Optional<BigDecimal> least, Optional<BigDecimal> most, String source) {
    public MeasureLimit {
        Objects.requireNonNull(least, "least");
        Objects.requireNonNull(most, "most");
        if (least.isEmpty() && most.isEmpty()) {
            throw new IllegalArgumentException("a limit has a least or a most");
        }
        if (least.isPresent() && most.isPresent() && least.get().compareTo(most.get()) > 0) {
            throw new IllegalArgumentException("the least is above the most");
        }
        if (source.isBlank()) {
            throw new IllegalArgumentException("a limit names its source");
        }
    }

    /** Whether a value keeps the limit; the limit itself still does. */
    public boolean isKept(BigDecimal value) {
        return least.filter(low -> value.compareTo(low) < 0).isEmpty()
                && most.filter(high -> value.compareTo(high) > 0).isEmpty();
    }
}
