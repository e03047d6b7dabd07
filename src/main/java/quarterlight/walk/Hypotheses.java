package quarterlight.walk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import quarterlight.walk.pace.GapReading;

/**
 * The hypotheses of one walk side by side: every idea of its pace with every idea of where moves go, and how much each counts as the pins bear
 * it out. One thread at a time.
 */
final class Hypotheses {
    private final List<WalkModel.Moves> moves;
    private final List<GapReading> readings;
    private final double pinsOfPace;
    /** Reading by reading, in each the moves in their order. */
    private final List<WalkChain> chains = new ArrayList<>();

    Hypotheses(List<JumpMatrix> jumps, List<GapReading> readings, WalkModel model, double[][] seen) {
        moves = model.moves();
        pinsOfPace = model.pinsOfPace();
        this.readings = List.copyOf(readings);
        for (GapReading reading : readings) {
            jumps.forEach(jump -> chains.add(new WalkChain(jump, reading, seen)));
        }
    }

    /** Takes in that what was seen has changed at moments from {@code first} to {@code last}. */
    void update(int first, int last) {
        chains.forEach(chain -> chain.update(first, last));
    }

    WalkChain chain(int hypothesis) {
        return chains.get(hypothesis);
    }

    /** How much each hypothesis counts; sums to 1. */
    double[] weights() {
        int count = moves.size();
        double[] weights = new double[chains.size()];
        double[] pace = new double[readings.size()];
        for (int r = 0; r < pace.length; r++) {
            double[] log = new double[count];
            for (int k = 0; k < count; k++) {
                log[k] = Math.log(moves.get(k).prior())
                        + chains.get(r * count + k).logLikelihood();
            }
            pace[r] = readings.get(r).logWeight() + pinsOfPace * logSum(log);
            System.arraycopy(shares(log), 0, weights, r * count, count);
        }
        double[] share = shares(pace);
        for (int k = 0; k < weights.length; k++) {
            weights[k] *= share[k / count];
        }
        return weights;
    }

    /** What the walk is like, as the hypotheses count now. */
    WalkTraits traits(double[] weights) {
        WalkTraits traits = WalkTraits.NONE;
        for (int k = 0; k < weights.length; k++) {
            traits = traits.plus(weights[k], readings.get(k / moves.size()), moves.get(k % moves.size()));
        }
        return traits;
    }

    private static double logSum(double[] log) {
        double most = DoubleStream.of(log).max().orElse(0);
        return most + Math.log(DoubleStream.of(log).map(x -> Math.exp(x - most)).sum());
    }

    private static double[] shares(double[] log) {
        double all = logSum(log);
        return Arrays.stream(log).map(x -> Math.exp(x - all)).toArray();
    }
}
