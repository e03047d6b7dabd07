package quarterlight.thickness.statistics;

import org.apache.commons.statistics.descriptive.Mean;
import org.apache.commons.statistics.descriptive.StandardDeviation;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * Mean, standard deviation (n-1) and two-sided Student interval of a sample of two or more.
 * <p>Source: NIST/SEMATECH e-Handbook, 1.3.5.2. The library's two-pass updates pass the NIST reference sets.
 *
 * @param n number of values, at least 2
 */
public record MeanInterval(int n, double mean, double sd, double low, double high) {
    /** The coverage of every interval that people read: about 95 %, the usual one for reports (JCGM 100:2008, 6.2.3 and G.1.2). */
    public static final double LEVEL = 0.95;

    /**
     * @param sample finite values, at least 2; not changed
     * @param level coverage, 0.95 for a 95 % interval
     */
    public static MeanInterval of(double[] sample, double level) {
        if (sample.length < 2) {
            throw new IllegalArgumentException("an interval of the mean needs 2 values, not " + sample.length);
        }
        double mean = Mean.of(sample).getAsDouble();
        return of(sample.length, mean, StandardDeviation.of(sample).getAsDouble(), level);
    }

    static MeanInterval of(int n, double mean, double sd, double level) {
        double t = TDistribution.of(n - 1).inverseSurvivalProbability((1 - level) / 2);
        double half = t * sd / Math.sqrt(n);
        return new MeanInterval(n, mean, sd, mean - half, mean + half);
    }
}
