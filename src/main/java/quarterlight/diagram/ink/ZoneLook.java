package quarterlight.diagram.ink;

import java.util.Objects;
import java.util.OptionalInt;
import quarterlight.finish.scale.ThicknessSteps;

/**
 * How one zone looks.
 *
 * @param step of {@link ThicknessSteps}; empty for a zone without a value
 * @param number the value as written in the zone, without unit; empty for none
 * @param hatch density of the hatching, 0 (none) to 4: refinish likelihood
 * @param stipple density of the stipple, 0 (none) to 5: rust grade
 * @param surface what covers it besides
 */
public record ZoneLook(OptionalInt step, String number, int hatch, int stipple, Surface surface) {
    /** The highest density of hatching. */
    public static final int MAX_HATCH = 4;
    /** The highest density of stipple. */
    public static final int MAX_STIPPLE = 5;
    /** The look of a zone that nothing is known of. */
    public static final ZoneLook NONE = new ZoneLook(OptionalInt.empty(), "", 0, 0, Surface.PLAIN);

    public ZoneLook {
        Objects.requireNonNull(step, "step");
        Objects.requireNonNull(number, "number");
        Objects.requireNonNull(surface, "surface");
        if (step.isPresent() && (step.getAsInt() < ThicknessSteps.LOWEST || step.getAsInt() > ThicknessSteps.HIGHEST)) {
            throw new IllegalArgumentException("no such step: " + step.getAsInt());
        }
        if (hatch < 0 || hatch > MAX_HATCH || stipple < 0 || stipple > MAX_STIPPLE) {
            throw new IllegalArgumentException("no such density: hatching " + hatch + ", stipple " + stipple);
        }
    }

    /** A zone that only its surface tells of. */
    public static ZoneLook of(Surface surface) {
        return new ZoneLook(OptionalInt.empty(), "", 0, 0, surface);
    }

    /** Whether something is drawn over the fill that words must be kept apart from. */
    public boolean isTextured() {
        return hatch > 0 || stipple > 0 || surface != Surface.PLAIN;
    }

    /** The density of hatching for a likelihood in percent: 0 below 20, then one more for every 20. */
    public static int hatchOf(double percent) {
        return (int) Math.min(MAX_HATCH, Math.max(0, Math.floor(percent / 20)));
    }
}
