package quarterlight.edit.compare;

import java.util.Objects;
import java.util.Optional;
import quarterlight.compare.matter.Care;
import quarterlight.units.ThicknessUnit;

/**
 * What is asked of a comparison.
 *
 * @param unit of all thicknesses; empty for the one in which most of the first car's readings were typed
 * @param first which car is the first of the two in detail, counted from 0
 * @param second which is the other
 */
public record ComparisonChoice(Care care, Optional<ThicknessUnit> unit, int first, int second) {
    /** Nothing asked: the first two in detail. */
    public static final ComparisonChoice USUAL = new ComparisonChoice(Care.NONE, Optional.empty(), 0, 1);

    public ComparisonChoice {
        Objects.requireNonNull(care, "care");
        Objects.requireNonNull(unit, "unit");
        if (first == second || first < 0 || second < 0) {
            throw new IllegalArgumentException("two different cars are laid side by side in detail");
        }
    }

    public ComparisonChoice with(Care other) {
        return new ComparisonChoice(other, unit, first, second);
    }

    public ComparisonChoice with(ThicknessUnit other) {
        return new ComparisonChoice(care, Optional.of(other), first, second);
    }

    public ComparisonChoice of(int one, int other) {
        return new ComparisonChoice(care, unit, one, other);
    }
}
