package quarterlight.walk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The chance that the walker moved in each gap: one series for each hypothesis of how many photos a stop has, or one from habits. */
final class MoveChances {
    private static final double MAX_GAP = 20;
    private static final double MIN_CHANCE = 0.01;

    private MoveChances() {}

    /** @param gaps seconds, none negative */
    static List<double[]> of(double[] gaps, GapCounts habits, WalkModel model) {
        double usual = GapCounts.usual(gaps);
        if (habits.total() >= model.habitGaps()) {
            double[] fit = habits.logistic();
            return List.of(Arrays.stream(gaps)
                    .map(gap ->
                            1 / (1 + Math.exp(-(fit[0] + fit[1] * Math.log(Math.max(gap, usual / MAX_GAP) / usual)))))
                    .map(chance -> Math.min(model.mostMoving(), Math.max(MIN_CHANCE, chance)))
                    .toArray());
        }
        List<double[]> all = new ArrayList<>();
        for (WalkModel.Pace pace : model.paces()) {
            double[] length = Arrays.stream(gaps)
                    .map(gap -> Math.min(MAX_GAP, Math.pow(gap / usual, pace.gapPower())))
                    .toArray();
            double scale = scaleToMean(length, 1 / pace.photosPerStop());
            all.add(Arrays.stream(length)
                    .map(x -> Math.min(model.mostMoving(), -Math.expm1(-scale * x)))
                    .toArray());
        }
        return all;
    }

    /** The factor by which the mean chance of moving over all gaps becomes {@code moving}; found by bisection. */
    private static double scaleToMean(double[] x, double moving) {
        double low = 1e-6;
        double high = 1e3;
        for (int i = 0; i < 50; i++) {
            double middle = Math.sqrt(low * high);
            double mean = 0;
            for (double v : x) {
                mean -= Math.expm1(-middle * v) / x.length;
            }
            if (mean < moving) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Math.sqrt(low * high);
    }
}
