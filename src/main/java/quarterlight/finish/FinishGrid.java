package quarterlight.finish;

import java.util.Objects;
import quarterlight.car.FinishProfile;

/**
 * The points over which the finish history of a car is summed, and the laws of a panel's level at each of them. Depends
 * on the model and the profile alone: make it once, use it for every car. Immutable.
 * <p>A coat that is a panel's own, LN(m, s), is the mixture of coats of jobs, LN(c, j), over log c normal about log m
 * with variance s² - j²; so its likelihood is a weighted sum of those of the jobs.
 */
final class FinishGrid {
    private static final double LEAST_MIL = 0.2;
    private static final double MOST_MIL = 150;

    final FinishModel model;
    final FinishProfile profile;
    final Axis panel;
    final Axis level;
    final Axis coat;
    final Axis bareCoat;
    final double[] levelPrior;
    final double[] coatPrior;
    final double[] bareCoatPrior;
    final double[] ownCoat;
    final double[] ownBareCoat;
    final double[] withinLogSds;
    final Kernel factory;
    final Kernel bare;
    final CoatOnFinish over;

    FinishGrid(FinishModel model, FinishProfile profile, GridSize size) {
        this.model = Objects.requireNonNull(model, "model");
        this.profile = Objects.requireNonNull(profile, "profile");
        double step = 1.0 / size.perUnit();
        LogNormal prior = model.levels().get(profile);
        double job = model.jobLogSd();
        panel = Axis.covering(Math.log(LEAST_MIL), Math.log(MOST_MIL), 1, step);
        level = Axis.of(prior, size.tails(), size.levelSteps(prior.logSd()), step);
        coat = Axis.of(model.coat(), size.tails(), size.coatSteps(), step);
        bareCoat = Axis.of(model.bareCoat(), size.tails(), size.bareCoatSteps(), step);
        levelPrior = level.weights(prior.logMedian(), prior.logSd());
        coatPrior = coat.weights(model.coat().logMedian(), model.coat().logSd());
        bareCoatPrior =
                bareCoat.weights(model.bareCoat().logMedian(), model.bareCoat().logSd());
        ownCoat = coat.weights(model.coat().logMedian(), remaining(model.coat().logSd(), job));
        ownBareCoat = bareCoat.weights(
                model.bareCoat().logMedian(), remaining(model.bareCoat().logSd(), job));
        withinLogSds = model.withinLogSds().stream().mapToDouble(sd -> sd).toArray();
        factory = Kernel.normal(model.panelLogSd(), step);
        bare = Kernel.normal(job, step);
        over = new CoatOnFinish(level, coat, model.panelLogSd(), job);
    }

    private static double remaining(double whole, double part) {
        return Math.sqrt(whole * whole - part * part);
    }

    /** Number of values of the spread within a panel. */
    int spreads() {
        return withinLogSds.length;
    }
}
