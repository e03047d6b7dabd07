package quarterlight.diagram.ink;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * How one zone looks.
 *
 * @param share place on the ramp, 0 to 1; empty for a zone without a value
 * @param number the value as written in the zone, without unit; empty for none
 * @param hatch density of the hatching, 0 (none) to 4: refinish likelihood
 * @param stipple density of the stipple, 0 (none) to 5: rust grade
 */
public record ZoneLook(OptionalDouble share, String number, int hatch, int stipple) {
    /** The highest density of hatching. */
    public static final int MAX_HATCH = 4;
    /** The highest density of stipple. */
    public static final int MAX_STIPPLE = 5;

    public ZoneLook {
        Objects.requireNonNull(share, "share");
        Objects.requireNonNull(number, "number");
        if (share.isPresent() && !(share.getAsDouble() >= 0 && share.getAsDouble() <= 1)) {
            throw new IllegalArgumentException(
                    "a place on the ramp lies between 0 and 1, not at " + share.getAsDouble());
        }
        if (hatch < 0 || hatch > MAX_HATCH || stipple < 0 || stipple > MAX_STIPPLE) {
            throw new IllegalArgumentException("no such density: hatching " + hatch + ", stipple " + stipple);
        }
    }

    /** The density of hatching for a likelihood in percent: 0 below 20, then one more for every 20. */
    public static int hatchOf(double percent) {
        return (int) Math.min(MAX_HATCH, Math.max(0, Math.floor(percent / 20)));
    }
}
