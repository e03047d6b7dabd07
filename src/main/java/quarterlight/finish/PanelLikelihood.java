package quarterlight.finish;

import java.util.Arrays;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * The likelihood of a zone's values for every log level of the panel and every spread within it, without and with filler,
 * scaled so that the largest is 1 (the scale is the same for all and cancels).
 * <p>Layout: row {@code 2w} is without filler for spread w, row {@code 2w + 1} with filler; one entry per panel point.
 */
final class PanelLikelihood {
    private static final double UM_PER_MIL = 25.4;

    private final FinishGrid grid;
    private final double[][] product;

    private PanelLikelihood(FinishGrid grid) {
        this.grid = grid;
        this.product = new double[2 * grid.withinLogSds.length][grid.panel.count()];
        for (double[] row : product) {
            Arrays.fill(row, 1);
        }
    }

    /**
     * @param grid points of the panel axis and the spreads
     * @param zone values in um; one below the model's least stray reading (bare metal, a probe that slipped) counts as
     *     that
     * @param gaugeRangeUm the gauge's range in um, above 0
     * @return likelihoods, 2 spreads x points
     */
    static double[][] of(FinishGrid grid, ZoneEvidence zone, double gaugeRangeUm) {
        PanelLikelihood likelihood = new PanelLikelihood(grid);
        for (double um : zone.spotsUm()) {
            likelihood.multiplyValue(um / UM_PER_MIL);
        }
        if (zone.overRange() > 0) {
            double[][] beyond = likelihood.beyond(gaugeRangeUm / UM_PER_MIL);
            for (int n = 0; n < zone.overRange(); n++) {
                likelihood.multiply(beyond);
            }
        }
        return likelihood.product;
    }

    /** Densities of the logarithm; the factor 1/y common to all histories cancels. */
    private void multiplyValue(double mil) {
        FinishModel model = grid.model;
        double log = Math.log(Math.max(mil, model.strayLowMil()));
        double inRange = mil <= model.strayHighMil() ? 1 : 0;
        double stray = inRange * model.strayShare() / Math.log(model.strayHighMil() / model.strayLowMil());
        double sound = 1 - model.strayShare();
        double soundFiller = sound * (1 - model.fillerShare());
        double onFiller = sound * model.fillerShare() * model.filler().densityOfLog(log) + stray;
        for (int w = 0; w < grid.withinLogSds.length; w++) {
            double[] plain = product[2 * w];
            double[] filled = product[2 * w + 1];
            for (int k = 0; k < plain.length; k++) {
                double density = LogNormal.normal(log, grid.panel.log(k), grid.withinLogSds[w]);
                plain[k] *= sound * density + stray;
                filled[k] *= soundFiller * density + onFiller;
            }
        }
        rescale();
    }

    /** Chances that a value lies at or beyond the range. */
    private double[][] beyond(double rangeMil) {
        FinishModel model = grid.model;
        NormalDistribution normal = NormalDistribution.of(0, 1);
        double log = Math.log(rangeMil);
        double share = Math.log(model.strayHighMil() / rangeMil) / Math.log(model.strayHighMil() / model.strayLowMil());
        double stray = model.strayShare() * Math.max(0, Math.min(1, share));
        double sound = 1 - model.strayShare();
        double zFiller = (log - model.filler().logMedian()) / model.filler().logSd();
        double onFiller = sound * model.fillerShare() * normal.survivalProbability(zFiller) + stray;
        double[][] chances = new double[product.length][grid.panel.count()];
        for (int w = 0; w < grid.withinLogSds.length; w++) {
            for (int k = 0; k < grid.panel.count(); k++) {
                double chance = normal.survivalProbability((log - grid.panel.log(k)) / grid.withinLogSds[w]);
                chances[2 * w][k] = sound * chance + stray;
                chances[2 * w + 1][k] = sound * (1 - model.fillerShare()) * chance + onFiller;
            }
        }
        return chances;
    }

    private void multiply(double[][] factors) {
        for (int row = 0; row < product.length; row++) {
            for (int k = 0; k < product[row].length; k++) {
                product[row][k] *= factors[row][k];
            }
        }
        rescale();
    }

    private void rescale() {
        double most = 0;
        for (double[] row : product) {
            for (double value : row) {
                most = Math.max(most, value);
            }
        }
        for (double[] row : product) {
            if (most == 0) {
                Arrays.fill(row, 1); // a value that nothing explains says nothing
            } else {
                for (int k = 0; k < row.length; k++) {
                    row[k] /= most;
                }
            }
        }
    }
}
