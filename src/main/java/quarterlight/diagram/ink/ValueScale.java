package quarterlight.diagram.ink;

import java.util.Objects;

/**
 * The range that the ramp spans; passed in by the caller so that two cars can share one.
 *
 * @param title what is shown: "Mean coating thickness"
 * @param unit its unit as shown: "µm"
 * @param low value of the light end
 * @param high value of the dark end, above {@code low}
 */
public record ValueScale(String title, String unit, double low, double high) {
    public ValueScale {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(unit, "unit");
        if (!(high > low) || !Double.isFinite(high - low)) {
            throw new IllegalArgumentException("a range runs from low to high, not from " + low + " to " + high);
        }
    }

    /** Where a value lies in the range, 0 to 1; values beyond the ends take the end. */
    public double share(double value) {
        return Math.min(1, Math.max(0, (value - low) / (high - low)));
    }
}
