package quarterlight.finish.history;

import java.util.List;

/**
 * How many zones of a car have a certain history, as a distribution.
 *
 * @param chances entry k is the probability of exactly k zones; at least one entry, sum 1
 */
public record CountDistribution(List<Double> chances) {
    private static final double ROUNDING = 1e-12;

    public CountDistribution {
        chances = List.copyOf(chances);
        double sum = chances.stream().mapToDouble(chance -> chance).sum();
        if (chances.isEmpty() || !(Math.abs(sum - 1) < 1e-6)) {
            throw new IllegalArgumentException("the chances of all counts sum to 1, not to " + sum);
        }
    }

    public double mean() {
        double mean = 0;
        for (int k = 0; k < chances.size(); k++) {
            mean += k * chances.get(k);
        }
        return mean;
    }

    /** The least count that is not exceeded with probability {@code share}, 0 to 1. */
    public int percentile(double share) {
        double below = 0;
        for (int k = 0; k < chances.size(); k++) {
            below += chances.get(k);
            if (below >= share - ROUNDING) {
                return k;
            }
        }
        return chances.size() - 1;
    }

    /** Probability that this count is below the other's, the two cars being independent. */
    public double chanceFewerThan(CountDistribution other) {
        double fewer = 0;
        double below = 0;
        for (int k = 0; k < other.chances.size(); k++) {
            fewer += other.chances.get(k) * below;
            below += k < chances.size() ? chances.get(k) : 0;
        }
        return fewer;
    }

    /** Probability that both counts are equal, the two cars being independent. */
    public double chanceEqual(CountDistribution other) {
        double equal = 0;
        for (int k = 0; k < Math.min(chances.size(), other.chances.size()); k++) {
            equal += chances.get(k) * other.chances.get(k);
        }
        return equal;
    }
}
