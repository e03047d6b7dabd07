package quarterlight.thickness.statistics;

import org.apache.commons.statistics.descriptive.Median;
import org.apache.commons.statistics.descriptive.Quantile;

/** Order statistics of a sample. Quantiles by the definition that spreadsheets use (R7 of Hyndman and Fan, 1996). */
public final class Quantiles {
    /** Makes the median absolute deviation estimate the sd of a normal sample: 1 / Φ⁻¹(3/4). */
    public static final double MAD_SCALE = 1.4826;

    private static final Quantile R7 =
            Quantile.withDefaults().with(Quantile.EstimationMethod.HF7).withCopy(true);

    private Quantiles() {}

    /** @param sample finite values, at least one; not changed */
    public static double r7(double[] sample, double share) {
        requireSome(sample);
        return R7.evaluate(sample, share);
    }

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
