package quarterlight.compare;

import java.util.Objects;
import quarterlight.finish.history.CountDistribution;

/**
 * The counts of both cars over the same zones, the cars being independent of one another.
 *
 * @param chanceAFewer probability that A has fewer than B
 * @param chanceEqual that both have the same number
 * @param chanceBFewer that B has fewer than A
 */
public record CountComparison(
        CountSummary a, CountSummary b, double chanceAFewer, double chanceEqual, double chanceBFewer) {
    public CountComparison {
        Objects.requireNonNull(a, "a");
        Objects.requireNonNull(b, "b");
    }

    static CountComparison of(CountDistribution a, CountDistribution b) {
        return new CountComparison(
                CountSummary.of(a), CountSummary.of(b), a.chanceFewerThan(b), a.chanceEqual(b), b.chanceFewerThan(a));
    }
}
