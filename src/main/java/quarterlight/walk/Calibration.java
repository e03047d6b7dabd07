package quarterlight.walk;

import java.util.ArrayList;
import java.util.List;

/**
 * Brings the chance said of the first suggestion to how often such a suggestion is right where no earlier visit is known: a logistic
 * regression on its log odds and on what the walk is like. The numbers were fitted, with a weak pull to "as said", on 40 simulated inspectors
 * of each kind of walk (seeds 101 to 124 and 301 to 316), and are judged on others (docs/performance.md). The order of the suggestions stays.
 */
final class Calibration {
    private static final double USUAL_PACE = 0.25;
    private static final double LEAST = 0.01;

    private Calibration() {}

    /** @param best suggestions, best first */
    static List<Suggestion> calibrated(List<Suggestion> best, WalkTraits walk) {
        if (best.size() < 2) {
            return best;
        }
        double said = best.get(0).p();
        double second = best.get(1).p();
        double first = Math.max(chance(said, walk), second / (1 - said + second));
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
}
