package quarterlight.thickness;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import quarterlight.units.Worded;

/**
 * A spot that stands apart from the others of its zone. Shown, never dropped by itself.
 *
 * @param um the spot's value
 * @param rule how it was found
 */
public record Outlier(double um, Rule rule) {
    /** How outliers are found, by the number of spots. */
    public enum Rule implements Worded {
        /** Grubbs' test at 0.05, two-sided: the one value farthest from the mean, from 7 spots on. */
        GRUBBS,
        /** Beyond 1.5 interquartile ranges from the quartiles (R7), for 4 to 6 spots. */
        FENCES
    }

    private static final int GRUBBS_FROM = 7;
    private static final int FENCES_FROM = 4;
    private static final double LEVEL = 0.05;
    private static final double REACH = 1.5;

    /**
     * The outliers among the spots of one zone. Grubbs' test is for a single outlier (its level holds for one look), so
     * it names one at most; two that lie together can hide each other, which the plot shows and the test does not.
     *
     * @param um spot values in um, finite, any order; not changed
     * @return lowest first; none for fewer than 4 spots
     */
    public static List<Outlier> among(double[] um) {
        if (um.length >= GRUBBS_FROM) {
            return grubbs(um);
        }
        return um.length >= FENCES_FROM ? fences(um) : List.of();
    }

    private static List<Outlier> grubbs(double[] um) {
        Grubbs.Extreme extreme = Grubbs.extreme(um);
        double critical = Grubbs.criticalTwoSided(um.length, LEVEL);
        return extreme.statistic() > critical ? List.of(new Outlier(extreme.value(), Rule.GRUBBS)) : List.of();
    }

    private static List<Outlier> fences(double[] um) {
        double lower = Quantiles.r7(um, 0.25);
        double upper = Quantiles.r7(um, 0.75);
        double reach = REACH * (upper - lower);
        return Arrays.stream(um)
                .filter(value -> value < lower - reach || value > upper + reach)
                .mapToObj(value -> new Outlier(value, Rule.FENCES))
                .sorted(Comparator.comparingDouble(Outlier::um))
                .toList();
    }
}
