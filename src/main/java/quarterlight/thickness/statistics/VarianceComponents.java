package quarterlight.thickness.statistics;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.statistics.descriptive.Mean;
import org.apache.commons.statistics.distribution.FDistribution;

/**
 * How much of the scatter lies between groups (panels) and how much within them (from spot to spot), by the one-way
 * analysis of variance; the groups may differ in size.
 * <p>The component between is (MSB - MSW) / n0 with n0 = (N - Σn²/N) / (k - 1), and zero when that is negative (as in ISO
 * Guide 35; from memory).
 *
 * @param groups k, at least 2
 * @param values N, above k
 * @param mean mean of all values
 * @param meanSquareBetween MSB
 * @param meanSquareWithin MSW: the variance within
 * @param between variance between, 0 or more
 * @param shrinkage share of a group's distance from the mean that is kept in its shrunk mean, for a group of size n0
 */
public record VarianceComponents(
        int groups,
        int values,
        double mean,
        double meanSquareBetween,
        double meanSquareWithin,
        double between,
        double shrinkage) {
    /**
     * @param groups at least two, none empty, at least one with two values; finite
     * @throws IllegalArgumentException if there is too little data
     */
    public static VarianceComponents of(List<double[]> groups) {
        int k = groups.size();
        int n = groups.stream().mapToInt(group -> group.length).sum();
        if (k < 2 || n <= k || groups.stream().anyMatch(group -> group.length == 0)) {
            throw new IllegalArgumentException("variance components need two groups, none empty, one with two values");
        }
        double mean = Mean.of(groups.stream().flatMapToDouble(Arrays::stream).toArray())
                .getAsDouble();
        double squaresBetween = 0;
        double squaresWithin = 0;
        double sizes = 0;
        for (double[] group : groups) {
            double own = Mean.of(group).getAsDouble();
            squaresBetween += group.length * (own - mean) * (own - mean);
            sizes += (double) group.length * group.length;
            for (double value : group) {
                squaresWithin += (value - own) * (value - own);
            }
        }
        double msb = squaresBetween / (k - 1);
        double msw = squaresWithin / (n - k);
        double size = (n - sizes / n) / (k - 1);
        double between = Math.max(0, (msb - msw) / size);
        double shrinkage = between == 0 ? 0 : between / (between + msw / size);
        return new VarianceComponents(k, n, mean, msb, msw, between, shrinkage);
    }

    public double sdWithin() {
        return Math.sqrt(meanSquareWithin);
    }

    public double sdBetween() {
        return Math.sqrt(between);
    }

    /** F of the analysis of variance. */
    public double f() {
        return meanSquareBetween / meanSquareWithin;
    }

    /** Probability of an F as large or larger if all groups have one mean. */
    public double p() {
        return FDistribution.of(groups - 1, values - groups).survivalProbability(f());
    }
}
