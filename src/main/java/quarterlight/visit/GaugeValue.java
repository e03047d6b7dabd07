package quarterlight.visit;

import java.math.BigDecimal;
import java.util.Objects;
import quarterlight.units.Thickness;
import quarterlight.units.ThicknessUnit;

/** What the gauge showed at one touch, as typed: a number with its unit, no metal, or beyond the range. */
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
}
