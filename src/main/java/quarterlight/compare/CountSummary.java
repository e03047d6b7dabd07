package quarterlight.compare;

import java.util.Objects;
import quarterlight.finish.history.CountDistribution;

/**
 * How many zones of one car are refinished (or repaired), by its finish history.
 *
 * @param distribution over 0 to the number of zones counted
 * @param mean mean count
 * @param low 5th percentile
 * @param high 95th percentile
 */
public record CountSummary(CountDistribution distribution, double mean, int low, int high) {
    private static final double LOW = 0.05;
    private static final double HIGH = 0.95;

    public CountSummary {
        Objects.requireNonNull(distribution, "distribution");
    }

    static CountSummary of(CountDistribution counts) {
        return new CountSummary(counts, counts.mean(), counts.percentile(LOW), counts.percentile(HIGH));
    }
}
