package quarterlight.visit;

import java.util.Objects;
import java.util.Optional;
import quarterlight.car.ZoneId;

/**
 * How much of one kind of evidence this visit must bring, in place of the usual rule.
 *
 * @param zone the zone it is asked for; empty for every zone that the usual rule asks it for
 * @param evidence the word of a kind of evidence: {@code photo}, {@code spots} …
 * @param want how many, 0 if it is not asked for at all
 */
public record CoverageOverride(Optional<ZoneId> zone, String evidence, int want) {
    /** More than this is a slip of the hand. */
    public static final int MAX_WANT = 1000;

    public CoverageOverride {
        Objects.requireNonNull(zone, "zone");
        if (evidence.isBlank()) {
            throw new IllegalArgumentException("a wish names the evidence it is about");
        }
        if (want < 0 || want > MAX_WANT) {
            throw new IllegalArgumentException("a wish is for 0 to " + MAX_WANT + ", not " + want);
        }
    }
}
