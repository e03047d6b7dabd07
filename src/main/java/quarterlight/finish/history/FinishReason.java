package quarterlight.finish.history;

import java.util.Objects;
import java.util.Optional;
import quarterlight.units.Worded;
import quarterlight.visit.trial.SignKind;

/**
 * What one group of evidence does to a zone: how far the odds would move back if it were left out.
 *
 * @param sign which sign, if the source is one
 * @param seen false for a sign that was looked for and not seen; else true
 * @param log10Refinish log10 of the odds of "not factory" with the group over those without it; above 0 speaks for
 *     refinishing; held within -9 and 9
 * @param log10Repair the same for the odds of filler
 */
public record FinishReason(
        Source source, Optional<SignKind> sign, boolean seen, double log10Refinish, double log10Repair) {
    /** The groups of evidence. */
    public enum Source implements Worded {
        /** The zone's thickness values, those beyond the range too. */
        VALUES,
        /** Spots where the gauge found no metal. */
        NO_METAL,
        SIGN,
        RUST,
        /** All other zones: what they say of the car's factory level and of what was done to it. */
        REST_OF_CAR
    }

    public FinishReason {
        Objects.requireNonNull(source, "source");
        if (sign.isPresent() != (source == Source.SIGN)) {
            throw new IllegalArgumentException("a reason names a sign if and only if it is one");
        }
    }
}
