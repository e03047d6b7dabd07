package quarterlight.thickness.statistics;

import java.util.List;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * Difference of two means with its Student interval, the variances not assumed equal (Welch): left against right, a zone
 * against the rest of the car.
 * <p>Source: B. L. Welch, Biometrika 34 (1947); degrees of freedom by Satterthwaite.
 *
 * @param difference first mean less second
 * @param standardError of the difference
 * @param degreesOfFreedom effective, not rounded
 * @param low lower end of the interval
 * @param high upper end of it
 */
public record MeanDifference(
        double difference, double standardError, double degreesOfFreedom, double low, double high) {
    /**
     * @param first finite values, at least 2, as {@code second}; not both without scatter
     * @param level coverage, 0.95 for a 95 % interval
     * @throws IllegalArgumentException if there is too little data
     */
    public static MeanDifference of(double[] first, double[] second, double level) {
        MeanInterval a = MeanInterval.of(first, level);
        MeanInterval b = MeanInterval.of(second, level);
        double difference = a.mean() - b.mean();
        double ua = a.sd() / Math.sqrt(a.n());
        double ub = b.sd() / Math.sqrt(b.n());
        UncertaintyBudget budget = new UncertaintyBudget(List.of(
                new UncertaintyBudget.Part("first mean", ua, a.n() - 1.0),
                new UncertaintyBudget.Part("second mean", ub, b.n() - 1.0)));
        double error = budget.combined();
        double df = budget.effectiveDegreesOfFreedom();
        double half = error == 0 ? 0 : TDistribution.of(df).inverseSurvivalProbability((1 - level) / 2) * error;
        return new MeanDifference(difference, error, df, difference - half, difference + half);
    }

    /** True if the interval does not hold 0: the two differ beyond what scatter explains, at the level asked for. */
    public boolean isClear() {
        return low > 0 || high < 0;
    }
}
