package quarterlight.finish;

/**
 * The likelihood of one zone's evidence under each history, for every value of the shared unknowns. The values' part is
 * in tables, the part of signs, rust and spots without metal in four constants.
 * <p>Layout: cell {@code c = i * spreads + w} for point i of the car's level and spread w.
 */
final class PanelTable {
    /** False if the zone has no values; the tables are then empty and stand for 1. */
    final boolean hasValues;
    /** By cell. */
    final double[] factory;
    /** By cell, then point of the coat of the job. */
    final double[] over;
    /** By cell, then point of the coat of the job. */
    final double[] filler;
    /** By spread, then point of the coat on the stripped car. */
    final double[] bare;
    /** By cell: over with a coat of the panel's own. */
    final double[] ownOver;
    /** By cell: filler with a coat of the panel's own. */
    final double[] ownFiller;
    /** By spread: stripped with a coat of the panel's own. */
    final double[] ownBare;
    /** Factors of all but the values themselves. */
    final ZoneFactors factors;

    private PanelTable(FinishGrid grid, ZoneFactors factors, boolean hasValues) {
        this.factors = factors;
        this.hasValues = hasValues;
        int cells = hasValues ? grid.level.count() * grid.spreads() : 0;
        int spreads = hasValues ? grid.spreads() : 0;
        factory = new double[cells];
        over = new double[cells * grid.coat.count()];
        filler = new double[cells * grid.coat.count()];
        bare = new double[spreads * grid.bareCoat.count()];
        ownOver = new double[cells];
        ownFiller = new double[cells];
        ownBare = new double[spreads];
    }

    static PanelTable of(FinishGrid grid, ZoneEvidence evidence, double gaugeRangeUm) {
        ZoneEvidence usable = evidence.usable();
        PanelTable table = new PanelTable(grid, ZoneFactors.of(grid.model, usable), usable.hasValues());
        if (usable.hasValues()) {
            table.fill(grid, PanelLikelihood.of(grid, usable, gaugeRangeUm));
        }
        return table;
    }

    private void fill(FinishGrid grid, double[][] likelihood) {
        int spreads = grid.spreads();
        int coats = grid.coat.count();
        int bareCoats = grid.bareCoat.count();
        int origin = grid.panel.first();
        for (int i = 0; i < grid.level.count(); i++) {
            int at = grid.level.index(i) - origin;
            for (int w = 0; w < spreads; w++) {
                factory[i * spreads + w] = expectation(grid.factory, likelihood[2 * w], at);
            }
            for (int j = 0; j < coats; j++) {
                Kernel kernel = grid.over.of(grid.coat.index(j) - grid.level.index(i));
                for (int w = 0; w < spreads; w++) {
                    int cell = (i * spreads + w) * coats + j;
                    over[cell] = expectation(kernel, likelihood[2 * w], at);
                    filler[cell] = expectation(kernel, likelihood[2 * w + 1], at);
                }
            }
        }
        for (int w = 0; w < spreads; w++) {
            for (int j = 0; j < bareCoats; j++) {
                bare[w * bareCoats + j] = expectation(grid.bare, likelihood[2 * w], grid.bareCoat.index(j) - origin);
            }
        }
        average(over, grid.ownCoat, ownOver);
        average(filler, grid.ownCoat, ownFiller);
        average(bare, grid.ownBareCoat, ownBare);
    }

    /** Sum of the likelihood over a law of the panel's level about lattice point {@code at}. */
    private static double expectation(Kernel kernel, double[] likelihood, int at) {
        double[] weights = kernel.weights();
        int shift = at + kernel.low();
        int from = Math.max(0, -shift);
        int to = Math.min(weights.length, likelihood.length - shift);
        double a = 0;
        double b = 0;
        double c = 0;
        double d = 0;
        int t = from;
        for (; t + 3 < to; t += 4) {
            a += weights[t] * likelihood[t + shift];
            b += weights[t + 1] * likelihood[t + 1 + shift];
            c += weights[t + 2] * likelihood[t + 2 + shift];
            d += weights[t + 3] * likelihood[t + 3 + shift];
        }
        for (; t < to; t++) {
            a += weights[t] * likelihood[t + shift];
        }
        return a + b + (c + d);
    }

    private static void average(double[] table, double[] weights, double[] averages) {
        for (int row = 0; row < averages.length; row++) {
            double sum = 0;
            for (int j = 0; j < weights.length; j++) {
                sum += table[row * weights.length + j] * weights[j];
            }
            averages[row] = sum;
        }
    }
}
