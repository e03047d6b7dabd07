package quarterlight.visit.reading;

import java.math.BigDecimal;
import java.util.Objects;
import quarterlight.units.Thickness;
import quarterlight.units.ThicknessUnit;

/** What the gauge showed at one touch, as typed: a number with its unit, a range said aloud, no metal, or beyond the gauge's range. */
public sealed interface GaugeValue {
    /** A number; kept as typed, with its unit and its digits. */
    record Measured(BigDecimal typed, ThicknessUnit unit) implements GaugeValue {
        private static final int MAX_DIGITS = 400;

        public Measured {
            Objects.requireNonNull(typed, "typed");
            Objects.requireNonNull(unit, "unit");
            if (typed.precision() > MAX_DIGITS || Math.abs((long) typed.scale()) > MAX_DIGITS) {
                throw new IllegalArgumentException("a typed number has no more than " + MAX_DIGITS + " digits");
            }
        }

        public Thickness thickness() {
            return Thickness.of(typed.doubleValue(), unit);
        }
    }

    /** The gauge found no metal. */
    record NoMetal() implements GaugeValue {}

    /** The value lies beyond the gauge's range. */
    record OverRange() implements GaugeValue {}

    /** A range as said; it is shown, and takes no part in the statistics. */
    record Range(BigDecimal low, BigDecimal high, ThicknessUnit unit) implements GaugeValue {
        public Range {
            Objects.requireNonNull(low, "low");
            Objects.requireNonNull(high, "high");
            Objects.requireNonNull(unit, "unit");
            if (low.compareTo(high) > 0) {
                throw new IllegalArgumentException("a range runs from the lower number to the higher one");
            }
        }

        /** As typed: {@code 4-5}. */
        public String typed() {
            return low.toPlainString() + "-" + high.toPlainString();
        }
    }
}
