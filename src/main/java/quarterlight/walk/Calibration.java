package quarterlight.walk;

import java.util.ArrayList;
import java.util.List;

/**
 * Brings the chance said of the first suggestion to how often such a suggestion is right: a logistic
 * regression on its log odds and on what the walk is like, one where no earlier visit is known and one where some are. The numbers were fitted, with a weak pull to "as said", on 40 simulated inspectors
 * of each kind of walk (seeds 101 to 124 and 301 to 316), and are judged on others (docs/performance.md). The order of the suggestions stays.
 */
final class Calibration {
    private static final double USUAL_PACE = 0.25;
    private static final double LEAST = 0.01;

    /** Weights of {@link #grounds}, fitted by {@code FitSpokenCalibration 5 501 220} on 40,632 photos of walks with words. */
    private static final double[] SPOKEN = {
        0.56, 0.58, 0.39, -0.05, 0.01, -0.10, 0.08, -0.14, -0.43, -0.78, -1.56, -0.24, 0.10, 0.00, 0.10, -0.62, -0.03,
        -0.63, -0.09, -0.02
    };

    /** Weights of {@link #groundsOfKnown}, fitted by {@code FitSpokenCalibration 6 40001 220 known} on 33,154 photos, half of walks with words. */
    private static final double[] KNOWN = {-0.19, 0.97, 0.07, -0.48, 0.31, -0.43, -0.73};

    private Calibration() {}

    /**
     * What was said on a walk.
     *
     * @param spoken share of the moments at which something was said
     * @param here 1 if at this one, else 0
     * @param unpinned 1 if nothing is pinned, else 0
     */
    record Talk(double spoken, double here, double unpinned) {}

    /** @param best suggestions, best first */
    static List<Suggestion> calibrated(List<Suggestion> best, WalkTraits walk) {
        return best.size() < 2 ? best : calibrated(best, chance(best.get(0).p(), walk));
    }

    /** The same where something was said on the walk. */
    static List<Suggestion> calibrated(List<Suggestion> best, WalkTraits walk, Talk talk) {
        return best.size() < 2 ? best : calibrated(best, chance(best.get(0).p(), walk, talk));
    }

    /** The same of one whose earlier visits are known, whether or not something was said. */
    static List<Suggestion> calibratedOfKnown(List<Suggestion> best, WalkTraits walk, Talk talk) {
        return best.size() < 2
                ? best
                : calibrated(best, logistic(KNOWN, groundsOfKnown(best.get(0).p(), walk, talk)));
    }

    private static List<Suggestion> calibrated(List<Suggestion> best, double chance) {
        double said = best.get(0).p();
        double second = best.get(1).p();
        double first = Math.max(chance, second / (1 - said + second));
        List<Suggestion> calibrated = new ArrayList<>();
        calibrated.add(new Suggestion(best.get(0).zone(), first));
        for (Suggestion other : best.subList(1, best.size())) {
            calibrated.add(new Suggestion(other.zone(), other.p() * (1 - first) / (1 - said)));
        }
        return List.copyOf(calibrated);
    }

    /** The chance that a first suggestion of which this much is said is right. */
    static double chance(double said, WalkTraits walk) {
        double p = Math.max(LEAST, Math.min(1 - LEAST, said));
        double pace = walk.pace() - USUAL_PACE;
        double level = 0.12
                + 1.6 * pace
                + 0.21 * walk.heavyTailed()
                + 0.41 * walk.inBursts()
                - 0.33 * walk.anywhere()
                - 0.48 * walk.mirror()
                + 0.36 * walk.kind()
                - 1.03 * walk.passedOver()
                - 11.7 * pace * walk.anywhere()
                - 4.3 * pace * walk.kind();
        double slope = 0.82 - 0.3 * pace + 0.25 * walk.heavyTailed() + 0.48 * walk.anywhere() + 0.55 * walk.kind();
        return 1 / (1 + Math.exp(-(level + slope * Math.log(p / (1 - p)))));
    }

    /** The chance that a first suggestion of which this much is said is right on a walk with words. */
    static double chance(double said, WalkTraits walk, Talk talk) {
        return logistic(SPOKEN, grounds(said, walk, talk));
    }

    private static double logistic(double[] weights, double[] grounds) {
        double sum = 0;
        for (int k = 0; k < grounds.length; k++) {
            sum += weights[k] * grounds[k];
        }
        return 1 / (1 + Math.exp(-sum));
    }

    /** What the chance goes by where earlier visits are known. */
    static double[] groundsOfKnown(double said, WalkTraits walk, Talk talk) {
        double p = Math.max(LEAST, Math.min(1 - LEAST, said));
        double odds = Math.log(p / (1 - p));
        double pace = walk.pace() - USUAL_PACE;
        return new double[] {1, odds, pace, odds * pace, talk.spoken(), odds * talk.spoken(), talk.here()};
    }

    /** What the chance goes by where words were said. */
    static double[] grounds(double said, WalkTraits walk, Talk talk) {
        double p = Math.max(LEAST, Math.min(1 - LEAST, said));
        double odds = Math.log(p / (1 - p));
        double pace = walk.pace() - USUAL_PACE;
        return new double[] {
            1,
            odds,
            pace,
            walk.heavyTailed(),
            walk.inBursts(),
            walk.anywhere(),
            walk.mirror(),
            walk.kind(),
            walk.passedOver(),
            pace * walk.anywhere(),
            pace * walk.kind(),
            odds * pace,
            odds * walk.heavyTailed(),
            odds * walk.anywhere(),
            odds * walk.kind(),
            talk.spoken(),
            odds * talk.spoken(),
            talk.here(),
            talk.unpinned(),
            odds * talk.unpinned()
        };
    }
}
