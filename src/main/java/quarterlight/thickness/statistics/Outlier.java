package quarterlight.thickness.statistics;

import java.util.List;
import quarterlight.units.Worded;

/**
 * A spot that stands apart from the others of its zone. Shown, never dropped by itself.
 *
 * @param um the spot's value
 * @param rule how it was found
 */
public record Outlier(double um, Rule rule) {
    /** How outliers are found. */
    public enum Rule implements Worded {
        /** Grubbs' test at 0.05, two-sided: the one value farthest from the mean, from 3 spots on, beyond the floor. */
        GRUBBS
    }

    /** The practical floor: nearer to the median of the other spots than this is no outlier, whatever the test says. */
    public static final double FLOOR_UM = 25;

    /** The floor as a share of that median; the larger of both counts. Both are judgement. */
    public static final double FLOOR_SHARE = 0.25;

    private static final int GRUBBS_FROM = 3;
    private static final double LEVEL = 0.05;

    /**
     * The outlier among the spots of one zone. Grubbs' test is for a single outlier (its level holds for one look), so
     * it names one at most; two that lie together can hide each other, which the plot shows and the test does not.
     *
     * @param um spot values in um, finite, any order; not changed
     * @return none for fewer than 3 spots
     */
    public static List<Outlier> among(double[] um) {
        if (um.length < GRUBBS_FROM) {
            return List.of();
        }
        Grubbs.Extreme extreme = Grubbs.extreme(um);
        boolean unlikely = extreme.statistic() > Grubbs.criticalTwoSided(um.length, LEVEL);
        return unlikely && isBeyondFloor(um, extreme.value())
                ? List.of(new Outlier(extreme.value(), Rule.GRUBBS))
                : List.of();
    }

    private static boolean isBeyondFloor(double[] um, double value) {
        double[] others = new double[um.length - 1];
        boolean left = false;
        int n = 0;
        for (double one : um) {
            if (!left && one == value) {
                left = true;
            } else {
                others[n++] = one;
            }
        }
        double median = Quantiles.median(others);
        return Math.abs(value - median) > Math.max(FLOOR_UM, FLOOR_SHARE * Math.abs(median));
    }
}
