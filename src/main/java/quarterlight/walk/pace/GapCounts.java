package quarterlight.walk.pace;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * How often a gap between two photos was a move, by its length against the visit's usual gap. Immutable.
 * <p>Bin {@code i} holds gaps from 2^((i-8)/2) to 2^((i-7)/2) times the usual one; shorter and longer ones go to the outer bins.
 *
 * @param gaps gaps counted, by bin
 * @param moved how many of them were moves, by bin
 * @param reached how many stops had a first, second, third photo whose next one is known too
 * @param ended how many of them ended there
 */
public record GapCounts(List<Integer> gaps, List<Integer> moved, List<Integer> reached, List<Integer> ended) {
    public static final int BINS = 20;
    public static final int PHASES = GapReadings.PHASES;
    public static final GapCounts NONE = new GapCounts(zeros(BINS), zeros(BINS), zeros(PHASES), zeros(PHASES));

    private static final int USUAL_BIN = 8;
    private static final double BINS_A_DOUBLING = 2;
    /** Before anything is counted, as if seen in two gaps: one gap in four of the usual length is a move. */
    private static final double[] PRIOR = {-1.2, 1};

    private static final double PRIOR_WEIGHT = 2;

    public GapCounts {
        gaps = List.copyOf(gaps);
        moved = List.copyOf(moved);
        reached = List.copyOf(reached);
        ended = List.copyOf(ended);
    }

    private static List<Integer> zeros(int count) {
        return Collections.nCopies(count, 0);
    }

    public static int bin(double gap, double usual) {
        double doublings = Math.log(Math.max(gap, 1e-6) / usual) / Math.log(2);
        int bin = USUAL_BIN + (int) Math.floor(doublings * BINS_A_DOUBLING);
        return Math.max(0, Math.min(BINS - 1, bin));
    }

    public int total() {
        return gaps.stream().mapToInt(Integer::intValue).sum();
    }

    public GapCounts plus(GapCounts other) {
        return new GapCounts(
                sum(gaps, other.gaps), sum(moved, other.moved), sum(reached, other.reached), sum(ended, other.ended));
    }

    private static List<Integer> sum(List<Integer> some, List<Integer> more) {
        List<Integer> sum = new ArrayList<>();
        for (int i = 0; i < some.size(); i++) {
            sum.add(some.get(i) + more.get(i));
        }
        return sum;
    }

    /** Odds that a gap is a move, its length not known. */
    double oddsOfMove() {
        double moves = moved.stream().mapToInt(Integer::intValue).sum();
        return (moves + 0.5) / (total() - moves + 1.5);
    }

    /** How many photos a stop has, as counted. */
    StopLaw law() {
        return StopLaw.counted(reached, ended, GapReadings.SOME);
    }

    /**
     * The chance of a move for a gap {@code x} = ln(gap / usual) as 1 / (1 + exp(-(a + b x))): logistic regression with a weak prior, by
     * Newton's method (common knowledge; from memory).
     *
     * @return a and b
     */
    double[] logistic() {
        double[] fit = PRIOR.clone();
        for (int step = 0; step < 25; step++) {
            double gradientA = PRIOR_WEIGHT * (PRIOR[0] - fit[0]);
            double gradientB = PRIOR_WEIGHT * (PRIOR[1] - fit[1]);
            double aa = PRIOR_WEIGHT;
            double ab = 0;
            double bb = PRIOR_WEIGHT;
            for (int i = 0; i < BINS; i++) {
                double x = (i - USUAL_BIN + 0.5) / BINS_A_DOUBLING * Math.log(2);
                double chance = 1 / (1 + Math.exp(-(fit[0] + fit[1] * x)));
                double rest = moved.get(i) - gaps.get(i) * chance;
                double weight = gaps.get(i) * chance * (1 - chance);
                gradientA += rest;
                gradientB += rest * x;
                aa += weight;
                ab += weight * x;
                bb += weight * x * x;
            }
            double determinant = aa * bb - ab * ab;
            fit[0] += (bb * gradientA - ab * gradientB) / determinant;
            fit[1] += (aa * gradientB - ab * gradientA) / determinant;
        }
        return fit;
    }

    /** The gap that a visit's gaps are measured against: their median, at least half a second. */
    public static double usual(double[] gapsSeconds) {
        double[] sorted = gapsSeconds.clone();
        Arrays.sort(sorted);
        return sorted.length == 0 ? 1 : Math.max(sorted[sorted.length / 2], 0.5);
    }
}
