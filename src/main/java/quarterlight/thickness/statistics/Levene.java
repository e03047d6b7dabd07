package quarterlight.thickness.statistics;

import java.util.List;
import org.apache.commons.statistics.descriptive.Mean;
import org.apache.commons.statistics.distribution.FDistribution;

/**
 * Levene's test of equal variances: a one-way analysis of variance of the distances from each group's center.
 * <p>Sources: H. Levene, 1960 (mean); M. B. Brown and A. B. Forsythe, 1974 (median); NIST/SEMATECH e-Handbook 1.3.5.10.
 * The two forms can decide differently on the same data, so a result names its center.
 *
 * @param center what the distances are taken from
 * @param statistic W
 * @param dfBetween groups - 1
 * @param dfWithin values - groups
 * @param p probability of a W as large or larger if the variances are equal
 */
public record Levene(Center center, double statistic, int dfBetween, int dfWithin, double p) {
    /** The center of a group. */
    public enum Center {
        MEAN,
        MEDIAN
    }

    /**
     * @param groups at least two, each with at least two finite values, not all distances equal
     * @throws IllegalArgumentException if there is too little data
     */
    public static Levene of(List<double[]> groups, Center center) {
        List<double[]> distances =
                groups.stream().map(group -> distances(group, center)).toList();
        VarianceComponents components = VarianceComponents.of(distances);
        int dfBetween = components.groups() - 1;
        int dfWithin = components.values() - components.groups();
        double w = components.meanSquareBetween() / components.meanSquareWithin();
        return new Levene(
                center,
                w,
                dfBetween,
                dfWithin,
                FDistribution.of(dfBetween, dfWithin).survivalProbability(w));
    }

    private static double[] distances(double[] group, Center center) {
        double middle = center == Center.MEAN ? Mean.of(group).getAsDouble() : Quantiles.median(group);
        double[] distances = new double[group.length];
        for (int i = 0; i < group.length; i++) {
            distances[i] = Math.abs(group[i] - middle);
        }
        return distances;
    }
}
