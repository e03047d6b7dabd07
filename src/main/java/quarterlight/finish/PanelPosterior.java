package quarterlight.finish;

import java.util.List;

/**
 * The joint posterior of one zone's history, of the level of its panel and of the spread within it. Layout of the mass:
 * history, spread, point of the panel axis; it sums to 1.
 */
final class PanelPosterior {
    final FinishGrid grid;
    final double[][][] mass;

    private PanelPosterior(FinishGrid grid) {
        this.grid = grid;
        this.mass = new double[4][grid.spreads()][grid.panel.count()];
    }

    static PanelPosterior of(
            FinishGrid grid, List<ScenarioSums> sums, FinishEvidence evidence, int zone, PanelTable table) {
        PanelPosterior posterior = new PanelPosterior(grid);
        Weights weights = new Weights(grid);
        double most = sums.stream()
                .mapToDouble(s -> s.zones().get(zone).logScale())
                .max()
                .orElse(0);
        for (ScenarioSums scenario : sums) {
            double prior = grid.model.middle().of(scenario.cells().scenario);
            double logEvidence = scenario.logEvidence() - most;
            weights.add(scenario, table, Math.log(prior) + logEvidence);
        }
        posterior.spread(weights);
        ZoneEvidence usable = evidence.zones().get(zone).usable();
        posterior.multiply(
                PanelLikelihood.of(grid, usable, evidence.gaugeRange().um()), table.factors.all());
        return posterior;
    }

    /** What the other zones and the scenarios say of the zone, before its own evidence. */
    private static final class Weights {
        final FinishGrid grid;
        final double[][] factory;
        final double[][][] over;
        final double[][][] filler;
        final double[][] bare;

        Weights(FinishGrid grid) {
            this.grid = grid;
            int spreads = grid.spreads();
            factory = new double[spreads][grid.level.count()];
            over = new double[spreads][grid.level.count()][grid.coat.count()];
            filler = new double[spreads][grid.level.count()][grid.coat.count()];
            bare = new double[spreads][grid.bareCoat.count()];
        }

        void add(ScenarioSums scenario, PanelTable table, double logWeight) {
            ScenarioCells cells = scenario.cells();
            double[] own = cells.likelihood(table, table.factors.all());
            for (int g = 0; g < cells.count(); g++) {
                double weight = scenario.weights()[g];
                if (weight > 0) {
                    double logOwn = Math.log(Math.max(own[g], Double.MIN_NORMAL));
                    put(cells, g, Math.exp(Math.log(weight) + logWeight - logOwn));
                }
            }
        }

        private void put(ScenarioCells cells, int cell, double weight) {
            int c = cell / cells.inner();
            int j = cell % cells.inner();
            int w = c % grid.spreads();
            int i = c / grid.spreads();
            factory[w][i] += weight * cells.panel[0];
            if (cells.scenario == Scenario.WHOLE_CAR_OVER) {
                over[w][i][j] += weight * cells.panel[1];
                filler[w][i][j] += weight * cells.panel[3];
            } else {
                for (int a = 0; a < grid.ownCoat.length; a++) {
                    over[w][i][a] += weight * cells.panel[1] * grid.ownCoat[a];
                    filler[w][i][a] += weight * cells.panel[3] * grid.ownCoat[a];
                }
            }
            if (cells.scenario == Scenario.WHOLE_CAR_STRIPPED) {
                bare[w][j] += weight * cells.panel[2];
            } else {
                for (int b = 0; b < grid.ownBareCoat.length; b++) {
                    bare[w][b] += weight * cells.panel[2] * grid.ownBareCoat[b];
                }
            }
        }
    }

    private void spread(Weights weights) {
        int origin = grid.panel.first();
        for (int w = 0; w < grid.spreads(); w++) {
            for (int i = 0; i < grid.level.count(); i++) {
                int at = grid.level.index(i) - origin;
                add(mass[0][w], grid.factory, at, weights.factory[w][i]);
                for (int j = 0; j < grid.coat.count(); j++) {
                    Kernel kernel = grid.over.of(grid.coat.index(j) - grid.level.index(i));
                    add(mass[1][w], kernel, at, weights.over[w][i][j]);
                    add(mass[3][w], kernel, at, weights.filler[w][i][j]);
                }
            }
            for (int j = 0; j < grid.bareCoat.count(); j++) {
                add(mass[2][w], grid.bare, grid.bareCoat.index(j) - origin, weights.bare[w][j]);
            }
        }
    }

    private static void add(double[] mass, Kernel kernel, int at, double weight) {
        if (weight == 0) {
            return;
        }
        int shift = at + kernel.low();
        int to = Math.min(kernel.weights().length, mass.length - shift);
        for (int t = Math.max(0, -shift); t < to; t++) {
            mass[t + shift] += weight * kernel.weights()[t];
        }
    }

    private void multiply(double[][] likelihood, double[] factors) {
        double sum = 0;
        for (int h = 0; h < 4; h++) {
            for (int w = 0; w < grid.spreads(); w++) {
                double[] own = likelihood[2 * w + (h == 3 ? 1 : 0)];
                for (int k = 0; k < own.length; k++) {
                    mass[h][w][k] *= own[k] * factors[h];
                    sum += mass[h][w][k];
                }
            }
        }
        for (double[][] ofHistory : mass) {
            for (double[] row : ofHistory) {
                for (int k = 0; k < row.length; k++) {
                    row[k] /= sum;
                }
            }
        }
    }
}
