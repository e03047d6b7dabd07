package quarterlight.finish;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import quarterlight.car.ZoneId;

/**
 * The finish history of a car with what ties its zones together, for questions about several zones at once. Holds some
 * 10 MB for a car of 25 measured zones. Immutable.
 */
public final class JointHistory {
    /** A cell this improbable cannot change a count by more than all cells times it: below 1e-5. */
    private static final double NEGLIGIBLE = 1e-10;

    private final FinishGrid grid;
    private final FinishEvidence evidence;
    private final List<PanelTable> tables;
    private final List<ScenarioSums> sums;
    private final FinishHistory history;

    JointHistory(
            FinishGrid grid,
            FinishEvidence evidence,
            List<PanelTable> tables,
            List<ScenarioSums> sums,
            FinishHistory history) {
        this.grid = grid;
        this.evidence = evidence;
        this.tables = List.copyOf(tables);
        this.sums = List.copyOf(sums);
        this.history = history;
    }

    public FinishHistory history() {
        return history;
    }

    public FinishEvidence evidence() {
        return evidence;
    }

    /** All zones that have a finish history. */
    public Set<ZoneId> zones() {
        Set<ZoneId> ids = new HashSet<>();
        evidence.zones().forEach(zone -> ids.add(zone.zone()));
        return ids;
    }

    /**
     * How many of these zones are not factory finish.
     *
     * @param among zones of this car; an empty set gives a count of 0
     * @throws IllegalArgumentException if the car lacks one of them
     */
    public CountDistribution notFactory(Set<ZoneId> among) {
        return count(among, chances -> chances[1] + chances[2] + chances[3]);
    }

    /** How many of these zones are refinished over filler; as {@link #notFactory}. */
    public CountDistribution filler(Set<ZoneId> among) {
        return count(among, chances -> chances[3]);
    }

    /**
     * Where more spots would settle most, best first: see {@link NextMeasurement}.
     *
     * @param seed of the random draws; the same seed gives the same answer
     */
    public List<NextMeasurement> next(long seed) {
        List<NextMeasurement> found = new ArrayList<>();
        for (int q = 0; q < tables.size(); q++) {
            if (evidence.zones().get(q).readable()) {
                PanelPosterior posterior = PanelPosterior.of(grid, sums, evidence, q, tables.get(q));
                found.add(NextMeasurement.of(posterior, evidence.zones().get(q).zone(), seed + q));
            }
        }
        found.sort((a, b) -> Double.compare(b.expectedBits(), a.expectedBits()));
        return found;
    }

    /** The posterior mixture over scenarios and cells of the count of independent zones within each cell. */
    private CountDistribution count(Set<ZoneId> among, ToDoubleFunction<double[]> share) {
        if (!zones().containsAll(among)) {
            throw new IllegalArgumentException("the car has not all of the zones " + among);
        }
        double[] chances = new double[among.size() + 1];
        for (ScenarioSums scenario : sums) {
            double weight = history.scenarios().get(scenario.cells().scenario);
            List<Integer> kept = kept(scenario, weight);
            double[][] shares = new double[kept.size()][among.size()];
            int column = 0;
            for (int q = 0; q < tables.size(); q++) {
                if (among.contains(evidence.zones().get(q).zone())) {
                    for (int n = 0; n < kept.size(); n++) {
                        shares[n][column] = share.applyAsDouble(chances(scenario.cells(), tables.get(q), kept.get(n)));
                    }
                    column++;
                }
            }
            for (int n = 0; n < kept.size(); n++) {
                double[] counts = ofIndependent(shares[n]);
                for (int k = 0; k < counts.length; k++) {
                    chances[k] += weight * scenario.weights()[kept.get(n)] * counts[k];
                }
            }
        }
        double sum = Arrays.stream(chances).sum();
        return new CountDistribution(
                Arrays.stream(chances).map(chance -> chance / sum).boxed().toList());
    }

    private static List<Integer> kept(ScenarioSums scenario, double weight) {
        List<Integer> kept = new ArrayList<>();
        for (int g = 0; g < scenario.weights().length; g++) {
            if (weight * scenario.weights()[g] > NEGLIGIBLE) {
                kept.add(g);
            }
        }
        return kept;
    }

    /** Probabilities of the zone's histories in one cell. */
    private static double[] chances(ScenarioCells cells, PanelTable zone, int cell) {
        double[] chances = new double[4];
        double sum = 0;
        History[] all = History.values();
        for (int h = 0; h < all.length; h++) {
            chances[h] = cells.panel[h] * zone.factors.all()[h] * cells.values(zone, all[h], cell);
            sum += chances[h];
        }
        for (int h = 0; h < chances.length; h++) {
            chances[h] = sum > 0 ? chances[h] / sum : cells.panel[h];
        }
        return chances;
    }

    /** Distribution of the number of successes of independent trials with these chances (Poisson binomial). */
    static double[] ofIndependent(double[] shares) {
        double[] counts = new double[shares.length + 1];
        counts[0] = 1;
        for (int n = 0; n < shares.length; n++) {
            for (int k = n + 1; k > 0; k--) {
                counts[k] = counts[k] * (1 - shares[n]) + counts[k - 1] * shares[n];
            }
            counts[0] *= 1 - shares[n];
        }
        return counts;
    }
}
