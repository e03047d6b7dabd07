package quarterlight.finish.model;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.NormalDistribution;
import quarterlight.finish.number.JudgedNumber;
import quarterlight.finish.number.ProcessModel;

/**
 * Values of all judged numbers at once, drawn by Latin hypercube sampling from a fixed seed: every number takes each of
 * its equally likely slices once. Each draw belongs to one {@link ProcessModel}, in turn. Immutable.
 * <p>Source: M. D. McKay, R. J. Beckman, W. J. Conover, Technometrics 21 (1979).
 */
public final class Draws {
    private static final long SEED = 20;
    private static final int COUNT = 192;

    /** The draws that the program uses. */
    public static final Draws USUAL = new Draws(COUNT, SEED);

    private final double[][] scores;
    private final double[][] values;
    private final SignTable signs;

    public Draws(int count, long seed) {
        JudgedNumber[] numbers = JudgedNumber.values();
        SplittableRandom random = new SplittableRandom(seed);
        scores = new double[count][numbers.length];
        values = new double[count][numbers.length];
        NormalDistribution normal = NormalDistribution.of(0, 1);
        for (JudgedNumber number : numbers) {
            int[] order = shuffled(count, random);
            for (int d = 0; d < count; d++) {
                double score = normal.inverseCumulativeProbability((order[d] + .5) / count);
                scores[d][number.ordinal()] = score + model(d).shift(number);
                values[d][number.ordinal()] = number.at(scores[d][number.ordinal()]);
            }
        }
        signs = new SignTable(this);
    }

    private Draws(double[][] scores, double[][] values) {
        this.scores = scores;
        this.values = values;
        signs = new SignTable(this);
    }

    /**
     * The same draws with one number held in all of them: what is said if it is known to be so, all others as uncertain as before.
     *
     * @param score standard normal score of the number: -1.645 is its low end, 1.645 its high end
     */
    public Draws holding(JudgedNumber number, double score) {
        double[][] heldScores = new double[values.length][];
        double[][] heldValues = new double[values.length][];
        for (int d = 0; d < values.length; d++) {
            heldScores[d] = scores[d].clone();
            heldValues[d] = values[d].clone();
            heldScores[d][number.ordinal()] = score;
            heldValues[d][number.ordinal()] = number.at(score);
        }
        return new Draws(heldScores, heldValues);
    }

    /** One of so many groups of draws; a group holds one draw of each {@link ProcessModel}. */
    Draws every(int groups) {
        int views = ProcessModel.values().length;
        int[] kept = IntStream.range(0, values.length)
                .filter(d -> Math.floorDiv(d, views) % groups == 0)
                .toArray();
        return new Draws(
                IntStream.of(kept).mapToObj(d -> scores[d]).toArray(double[][]::new),
                IntStream.of(kept).mapToObj(d -> values[d]).toArray(double[][]::new));
    }

    SignTable signs() {
        return signs;
    }

    private static int[] shuffled(int count, SplittableRandom random) {
        int[] order = new int[count];
        for (int n = 0; n < count; n++) {
            int k = random.nextInt(n + 1);
            order[n] = order[k];
            order[k] = n;
        }
        return order;
    }

    public int count() {
        return values.length;
    }

    public ProcessModel model(int draw) {
        return ProcessModel.values()[draw % ProcessModel.values().length];
    }

    public double value(int draw, JudgedNumber number) {
        return values[draw][number.ordinal()];
    }

    /** The standard normal score behind a value. */
    double score(int draw, JudgedNumber number) {
        return scores[draw][number.ordinal()];
    }
}
