package quarterlight.finish.model;

import java.util.Arrays;
import java.util.List;
import quarterlight.car.FinishProfile;
import quarterlight.finish.number.FactoryLevel;
import quarterlight.finish.number.LifeStory;

/**
 * What the model says of a car: every draw of the judged numbers with the exact sums over the states of the car in it.
 * Immutable.
 */
public final class CarPosterior {
    static final int STORIES = LifeStory.values().length;
    /** The band sees draws at half the power of the evidence: it is to show what plausible numbers do. */
    private static final double BAND_POWER = .5;

    private static final KnownCars KNOWN = new KnownCars();

    final Draws draws;
    final List<Panel> panels;
    final CarSums[] sums;
    /** {@code [draw][class][panel][story]}. */
    final double[][][][] signs;
    /** Weight of each draw; sum 1. */
    final double[] weights;

    final double[] bandWeights;
    /** Factor that brings the sums of a draw to the scale of all. */
    final double[] scales;

    private final PanelTable[] tables;
    private final FactoryLevel prior;

    private CarPosterior(
            Draws draws,
            List<Panel> panels,
            PanelTable[] tables,
            FactoryLevel prior,
            CarSums[] sums,
            double[][][][] signs,
            double[] logs) {
        this.draws = draws;
        this.panels = panels;
        this.tables = tables;
        this.prior = prior;
        this.sums = sums;
        this.signs = signs;
        double most = Arrays.stream(logs).max().orElse(0);
        weights = new double[sums.length];
        bandWeights = new double[sums.length];
        scales = new double[sums.length];
        for (int d = 0; d < sums.length; d++) {
            weights[d] = Math.exp(logs[d] - most);
            bandWeights[d] = Math.exp(BAND_POWER * (logs[d] - most));
        }
        normalize(weights);
        normalize(bandWeights);
        for (int d = 0; d < sums.length; d++) {
            scales[d] = weights[d] / sums[d].total;
        }
    }

    /** The car by these draws; one that was worked out lately by the usual ones is the same again. */
    public static CarPosterior of(List<Panel> panels, FinishProfile profile, Draws draws) {
        return draws == Draws.USUAL ? KNOWN.of(panels, profile) : worked(panels, profile, draws);
    }

    static CarPosterior worked(List<Panel> panels, FinishProfile profile, Draws draws) {
        PanelTable[] tables = panels.stream()
                .map(panel -> panel.spotsMil().isEmpty() ? null : PanelTable.of(panel))
                .toArray(PanelTable[]::new);
        return of(panels, tables, FactoryLevel.of(profile), draws);
    }

    /** The same car by other draws. */
    CarPosterior with(Draws others) {
        return of(panels, tables, prior, others);
    }

    private static CarPosterior of(List<Panel> panels, PanelTable[] tables, FactoryLevel prior, Draws draws) {
        CarSums[] sums = new CarSums[draws.count()];
        double[][][][] signs = new double[draws.count()][][][];
        double[] logs = new double[draws.count()];
        for (int d = 0; d < draws.count(); d++) {
            CarDraw car = new CarDraw(panels, tables, prior, draws, d);
            sums[d] = car.sums();
            signs[d] = car.signs;
            logs[d] = sums[d].reference + Math.log(sums[d].total);
        }
        return new CarPosterior(draws, panels, tables, prior, sums, signs, logs);
    }

    private static void normalize(double[] weights) {
        double sum = Arrays.stream(weights).sum();
        for (int d = 0; d < weights.length; d++) {
            weights[d] /= sum;
        }
    }

    /** Probability of each scenario: as built, some panels, whole car over, whole car stripped. */
    public double[] scenarios() {
        double[] all = new double[4];
        for (int d = 0; d < sums.length; d++) {
            for (int k = 0; k < all.length; k++) {
                all[k] += scales[d] * sums[d].scenarios[k];
            }
        }
        return all;
    }

    /** Mean and standard deviation of the car's factory level in mil. */
    public double[] level() {
        double mean = 0;
        double square = 0;
        for (int d = 0; d < sums.length; d++) {
            mean += scales[d] * sums[d].level;
            square += scales[d] * sums[d].levelSquare;
        }
        return new double[] {mean, Math.sqrt(Math.max(0, square - mean * mean))};
    }

    /** How many draws in effect carry the answer. */
    public double effectiveDraws() {
        return 1 / Arrays.stream(weights).map(w -> w * w).sum();
    }

    /**
     * How many of these panels are not factory finish, or hold filler: entry k is the chance of k. Within a draw and a
     * kind of car (some panels touched, or a job on the whole) the panels are taken as independent.
     */
    public double[] counts(List<Integer> indices, boolean repair) {
        double[] all = new double[indices.size() + 1];
        for (int d = 0; d < sums.length; d++) {
            for (int kind = 0; kind < 2; kind++) {
                double weight = scales[d]
                        * (kind == 0
                                ? sums[d].scenarios[0] + sums[d].scenarios[1]
                                : sums[d].scenarios[2] + sums[d].scenarios[3]);
                double[] counts = {1};
                for (int p : indices) {
                    counts = withOne(counts, share(d, kind, p, repair));
                }
                for (int k = 0; k < counts.length; k++) {
                    all[k] += weight * counts[k];
                }
            }
        }
        return all;
    }

    private double share(int draw, int kind, int panel, boolean repair) {
        double sum = 0;
        double with = 0;
        for (int s = 0; s < STORIES; s++) {
            double weight = sums[draw].measured[kind][panel][s] * signs[draw][kind][panel][s];
            sum += weight;
            with += (repair ? LifeStory.values()[s].hasFiller() : s > 0) ? weight : 0;
        }
        return sum > 0 ? with / sum : 0;
    }

    private static double[] withOne(double[] counts, double share) {
        double[] more = new double[counts.length + 1];
        for (int k = 0; k < counts.length; k++) {
            more[k] += counts[k] * (1 - share);
            more[k + 1] += counts[k] * share;
        }
        return more;
    }

    double[] before(int draw, Panel panel) {
        return StoryShares.before(draws, draw, panel);
    }

    public PanelStories panel(int index) {
        return new PanelStories(this, index);
    }

    public Draws draws() {
        return draws;
    }
}
