package quarterlight.finish;

import java.util.ArrayList;
import java.util.List;

/**
 * What is left of one scenario once the evidence of all zones is in. Logarithms are natural.
 *
 * @param cells the scenario's cells
 * @param logEvidence log of the probability of all evidence in the scenario, up to a constant common to all
 * @param weights posterior of each cell within the scenario; sums to 1
 * @param zones by zone
 */
final class ScenarioSums {
    private final ScenarioCells cells;
    private final double logEvidence;
    private final double[] weights;
    private final List<OfZone> zones;

    ScenarioSums(ScenarioCells cells, double logEvidence, double[] weights, List<OfZone> zones) {
        this.cells = cells;
        this.logEvidence = logEvidence;
        this.weights = weights;
        this.zones = zones;
    }

    ScenarioCells cells() {
        return cells;
    }

    double logEvidence() {
        return logEvidence;
    }

    double[] weights() {
        return weights;
    }

    List<OfZone> zones() {
        return zones;
    }

    /**
     * What a scenario says of one zone, before the scenario's prior.
     *
     * @param logScale log of a factor that {@code others} and {@code values} still lack
     * @param others probability of the evidence of all other zones
     * @param values the same times the likelihood of the zone's values, by history
     * @param alone likelihood of the zone's values if no other zone had evidence, by history; no factor lacks here
     */
    static final class OfZone {
        private final double logScale;
        private final double others;
        private final double[] values;
        private final double[] alone;

        OfZone(double logScale, double others, double[] values, double[] alone) {
            this.logScale = logScale;
            this.others = others;
            this.values = values;
            this.alone = alone;
        }

        double logScale() {
            return logScale;
        }

        double others() {
            return others;
        }

        double[] values() {
            return values;
        }

        double[] alone() {
            return alone;
        }
    }

    static ScenarioSums of(FinishGrid grid, Scenario scenario, List<PanelTable> zones) {
        ScenarioCells cells = new ScenarioCells(grid, scenario);
        double[] logWhole = new double[cells.count()];
        for (int g = 0; g < logWhole.length; g++) {
            logWhole[g] = Math.log(Math.max(cells.prior[g], Double.MIN_NORMAL));
        }
        List<double[]> logs = new ArrayList<>();
        for (PanelTable zone : zones) {
            double[] log = logOf(cells.likelihood(zone, zone.factors.all()), zone.hasValues);
            for (int g = 0; g < log.length; g++) {
                logWhole[g] += log[g];
            }
            logs.add(log);
        }
        Scaled whole = Scaled.exp(logWhole, new double[logWhole.length]);
        List<OfZone> found = new ArrayList<>();
        for (int q = 0; q < zones.size(); q++) {
            PanelTable zone = zones.get(q);
            Scaled others = zone.hasValues ? Scaled.exp(logWhole, logs.get(q)) : whole.shifted(-logs.get(q)[0]);
            double[] values = cells.expectation(zone, others.weights());
            double[] alone = cells.expectation(zone, cells.prior);
            found.add(new OfZone(others.logScale(), others.sum(), values, alone));
        }
        double[] weights = new double[logWhole.length];
        for (int g = 0; g < weights.length; g++) {
            weights[g] = whole.weights()[g] / whole.sum();
        }
        return new ScenarioSums(cells, whole.logScale() + Math.log(whole.sum()), weights, List.copyOf(found));
    }

    private static double[] logOf(double[] likelihood, boolean varies) {
        double[] log = new double[likelihood.length];
        double constant = Math.log(Math.max(likelihood[0], Double.MIN_NORMAL));
        for (int g = 0; g < log.length; g++) {
            log[g] = varies ? Math.log(Math.max(likelihood[g], Double.MIN_NORMAL)) : constant;
        }
        return log;
    }

    /** Numbers that lack the common factor exp(logScale). */
    private static final class Scaled {
        private final double logScale;
        private final double[] weights;
        private final double sum;

        Scaled(double logScale, double[] weights, double sum) {
            this.logScale = logScale;
            this.weights = weights;
            this.sum = sum;
        }

        double logScale() {
            return logScale;
        }

        double[] weights() {
            return weights;
        }

        double sum() {
            return sum;
        }

        /** exp(log - less), scaled by the largest. */
        static Scaled exp(double[] log, double[] less) {
            double most = Double.NEGATIVE_INFINITY;
            for (int g = 0; g < log.length; g++) {
                most = Math.max(most, log[g] - less[g]);
            }
            double[] weights = new double[log.length];
            double sum = 0;
            for (int g = 0; g < log.length; g++) {
                double off = log[g] - less[g] - most;
                if (off > -100) {
                    weights[g] = Math.exp(off);
                    sum += weights[g];
                }
            }
            return new Scaled(most, weights, sum);
        }

        Scaled shifted(double by) {
            return new Scaled(logScale + by, weights, sum);
        }
    }
}
