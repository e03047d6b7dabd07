package quarterlight.thickness.statistics;

import org.apache.commons.statistics.descriptive.Median;

/** Order statistics of a sample. */
public final class Quantiles {
    /** Makes the median absolute deviation estimate the sd of a normal sample: 1 / Φ⁻¹(3/4). */
    public static final double MAD_SCALE = 1.4826;

    private Quantiles() {}

    /** @param sample finite values, at least one; not changed */
    public static double median(double[] sample) {
        requireSome(sample);
        return Median.withDefaults().withCopy(true).evaluate(sample);
    }

    /**
     * Median absolute deviation about the median, times 1.4826; 0 for one value.
     *
     * @param sample finite values, at least one; not changed
     */
    public static double scaledMad(double[] sample) {
        double median = median(sample);
        double[] deviations = new double[sample.length];
        for (int i = 0; i < sample.length; i++) {
            deviations[i] = Math.abs(sample[i] - median);
        }
        return MAD_SCALE * median(deviations);
    }

    private static void requireSome(double[] sample) {
        if (sample.length == 0) {
            throw new IllegalArgumentException("an empty sample has no quantiles");
        }
    }
}
