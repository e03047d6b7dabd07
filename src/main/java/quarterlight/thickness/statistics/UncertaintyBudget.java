package quarterlight.thickness.statistics;

import java.util.List;
import java.util.Objects;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * Uncertainty of a result that is a sum of independent parts: root of the sum of squares, degrees of freedom by Welch and
 * Satterthwaite, expanded by the Student quantile.
 * <p>Source: JCGM 100:2008 (GUM), 5.1 and annex G.4; example H.1 is in the tests.
 *
 * @param parts at least one
 */
public record UncertaintyBudget(List<Part> parts) {
    /**
     * One part.
     *
     * @param standard standard uncertainty in the unit of the result, 0 or more
     * @param degreesOfFreedom above 0; infinite for a limit that is known
     */
    public record Part(String name, double standard, double degreesOfFreedom) {
        public Part {
            Objects.requireNonNull(name, "name");
            if (!(standard >= 0) || Double.isInfinite(standard) || !(degreesOfFreedom > 0)) {
                throw new IllegalArgumentException(
                        name + ": an uncertainty is 0 or more with degrees of freedom above 0");
            }
        }

        /** A stated tolerance ± limit, every value within it equally likely (GUM 4.3.7). */
        public static Part ofLimits(String name, double limit) {
            return new Part(name, limit / Math.sqrt(3), Double.POSITIVE_INFINITY);
        }
    }

    public UncertaintyBudget {
        parts = List.copyOf(parts);
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("an uncertainty has at least one part");
        }
    }

    public double combined() {
        return Math.sqrt(parts.stream()
                .mapToDouble(part -> part.standard() * part.standard())
                .sum());
    }

    /** Infinite if no part with finite degrees of freedom counts. */
    public double effectiveDegreesOfFreedom() {
        double combined = combined();
        double sum = 0;
        for (Part part : parts) {
            if (part.standard() > 0) {
                sum += Math.pow(part.standard() / combined, 4) / part.degreesOfFreedom();
            }
        }
        return sum == 0 ? Double.POSITIVE_INFINITY : 1 / sum;
    }

    /**
     * Half-width of the interval with this coverage; degrees of freedom cut to a whole number, as the guide advises.
     *
     * @param coverage 0.95 for 95 %
     */
    public double expanded(double coverage) {
        double tail = (1 - coverage) / 2;
        double df = Math.max(1, Math.floor(effectiveDegreesOfFreedom()));
        double factor = Double.isInfinite(df)
                ? NormalDistribution.of(0, 1).inverseSurvivalProbability(tail)
                : TDistribution.of(df).inverseSurvivalProbability(tail);
        return factor * combined();
    }
}
