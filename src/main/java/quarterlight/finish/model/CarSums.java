package quarterlight.finish.model;

import java.util.Arrays;
import quarterlight.finish.number.FixedNumber;
import quarterlight.finish.number.LifeStory;
import quarterlight.finish.number.PowerTable;

/**
 * Sums over the states of a car within one draw: how much each story of each panel weighs, with the panel's own evidence
 * at full power and that of the others at {@link FixedNumber#TRUST}.
 * <p>A state of the car gives each panel chances of its stories and a likelihood for each. Its weight is its prior times
 * the product of the panels' likelihoods to that power; for panel p the own factor is taken out again (the cavity) before
 * the own likelihood enters. Coarsened likelihoods: J. W. Miller, D. B. Dunson, Journal of the American Statistical
 * Association 114 (2019). Not for several threads.
 */
final class CarSums {
    /** A state that weighs less than this, as a logarithm against the reference, is left out. */
    private static final double NEGLIGIBLE = -18;

    /** Keeps logarithms finite where nothing explains a panel. */
    private static final double MIN_SUM = 1e-150;

    private static final double TRUST = FixedNumber.TRUST.value();
    private static final PowerTable OTHERS = new PowerTable(-TRUST);
    private static final int STORIES = LifeStory.values().length;
    private static final int FILLED = LifeStory.PATCH.ordinal();

    /** {@code [class][panel][story]}: cavity, prior and thickness, without signs; class 0 some panels, 1 whole car. */
    final double[][][] measured;
    /** The same without thickness. */
    final double[][][] open;
    /** By scenario. */
    final double[] scenarios = new double[4];

    double total;
    double level;
    double levelSquare;
    double reference;

    private final int panels;
    private final double[] own;
    private final double[][] cavity;
    /** Cavities that were given to the stories since the last scenario ended. */
    private final double[][] passed;

    private boolean started;
    private boolean touched;

    CarSums(int panels) {
        this.panels = panels;
        measured = new double[2][panels][STORIES];
        open = new double[2][panels][STORIES];
        own = new double[panels];
        cavity = new double[3][panels];
        passed = new double[3][panels];
    }

    /**
     * One state.
     *
     * @param touchedShare chance that a panel is touched, for each panel
     * @param filledShare share of the touched with filler, for each panel
     * @param sums likelihoods of each panel if factory, touched without filler, touched with
     */
    void add(
            double prior, double[] touchedShare, double[] filledShare, double[][] sums, int scenario, double levelMil) {
        double log = 0;
        double product = 1;
        double[] factory = sums[0];
        double[] without = sums[1];
        double[] with = sums[2];
        for (int p = 0; p < panels; p++) {
            double t = touchedShare[p];
            double filled = filledShare[p];
            double sum = (1 - t) * factory[p] + t * ((1 - filled) * without[p] + filled * with[p]);
            own[p] = Math.max(MIN_SUM, sum);
            product *= own[p];
            if (product < 1e-200) {
                log += Math.log(Math.max(product, Double.MIN_NORMAL));
                product = 1;
            }
        }
        log = TRUST * (log + Math.log(product)) + Math.log(prior);
        if (!started) {
            reference = log;
            started = true;
        }
        if (log > reference + 20) {
            rescale(Math.exp(reference - log));
            reference = log;
        }
        if (log < reference + NEGLIGIBLE) {
            return;
        }
        double weight = Math.exp(log - reference);
        total += weight;
        scenarios[scenario] += weight;
        level += weight * levelMil;
        levelSquare += weight * levelMil * levelMil;
        touched = true;
        for (int p = 0; p < panels; p++) {
            double t = touchedShare[p];
            double filled = filledShare[p];
            double c = weight * OTHERS.of(own[p]);
            cavity[0][p] += c * (1 - t);
            cavity[1][p] += c * t * (1 - filled);
            cavity[2][p] += c * t * filled;
        }
    }

    private void rescale(double factor) {
        total *= factor;
        level *= factor;
        levelSquare *= factor;
        for (int k = 0; k < scenarios.length; k++) {
            scenarios[k] *= factor;
        }
        for (int part = 0; part < cavity.length; part++) {
            scale(cavity[part], factor);
            scale(passed[part], factor);
        }
        for (int c = 0; c < 2; c++) {
            for (int p = 0; p < panels; p++) {
                scale(measured[c][p], factor);
                scale(open[c][p], factor);
            }
        }
    }

    private static void scale(double[] row, double factor) {
        for (int n = 0; n < row.length; n++) {
            row[n] *= factor;
        }
    }

    /**
     * Gives the states added since the last call to the stories.
     *
     * @param kind 0 for a car with some panels touched, 1 for a job on the whole car
     * @param thickness likelihood of the spots, panel by story
     * @param shares shares of the stories without filler among the touched without, and of those with among the touched with;
     *     the same until {@link #close}
     */
    void share(int kind, double[][] thickness, double[] shares) {
        if (!touched) {
            return;
        }
        touched = false;
        for (int p = 0; p < panels; p++) {
            double[] sum = measured[kind][p];
            double[] likelihood = thickness[p];
            sum[0] += cavity[0][p] * shares[0] * likelihood[0];
            for (int s = 1; s < FILLED; s++) {
                sum[s] += cavity[1][p] * shares[s] * likelihood[s];
            }
            for (int s = FILLED; s < STORIES; s++) {
                sum[s] += cavity[2][p] * shares[s] * likelihood[s];
            }
        }
        for (int part = 0; part < cavity.length; part++) {
            for (int p = 0; p < panels; p++) {
                passed[part][p] += cavity[part][p];
                cavity[part][p] = 0;
            }
        }
    }

    /** Ends the states of one scenario: what was given to the stories with their thickness is given without it, too. */
    void close(int kind, double[] shares) {
        for (int p = 0; p < panels; p++) {
            for (int s = 0; s < STORIES; s++) {
                open[kind][p][s] += passed[s == 0 ? 0 : s < FILLED ? 1 : 2][p] * shares[s];
            }
        }
        for (double[] row : passed) {
            Arrays.fill(row, 0);
        }
    }
}
