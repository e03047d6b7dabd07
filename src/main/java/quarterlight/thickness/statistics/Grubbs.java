package quarterlight.thickness.statistics;

import org.apache.commons.statistics.descriptive.Mean;
import org.apache.commons.statistics.descriptive.StandardDeviation;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * Grubbs' test for one outlier in a normal sample: G = max |x - mean| / sd against
 * (n-1)/√n · √(t² / (n-2+t²)), t the Student quantile with n-2 degrees of freedom.
 * <p>Source: F. E. Grubbs, Technometrics 11 (1969); NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.17.1.
 */
public final class Grubbs {
    private Grubbs() {}

    /**
     * The value farthest from the mean.
     *
     * @param statistic G; 0 if all values are equal
     */
    public record Extreme(double value, double statistic) {}

    /**
     * @param sample finite values, at least 3
     * @throws IllegalArgumentException if there are fewer
     */
    public static Extreme extreme(double[] sample) {
        if (sample.length < 3) {
            throw new IllegalArgumentException("Grubbs' test needs 3 values, not " + sample.length);
        }
        double mean = Mean.of(sample).getAsDouble();
        double sd = StandardDeviation.of(sample).getAsDouble();
        double farthest = sample[0];
        for (double value : sample) {
            if (Math.abs(value - mean) > Math.abs(farthest - mean)) {
                farthest = value;
            }
        }
        return new Extreme(farthest, sd > 0 ? Math.abs(farthest - mean) / sd : 0);
    }

    /** Critical value when an outlier may lie on either side. */
    public static double criticalTwoSided(int n, double level) {
        return critical(n, level / (2.0 * n));
    }

    private static double critical(int n, double tail) {
        double t = TDistribution.of(n - 2).inverseSurvivalProbability(tail);
        return (n - 1) / Math.sqrt(n) * Math.sqrt(t * t / (n - 2 + t * t));
    }
}
