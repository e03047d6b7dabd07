package quarterlight.walk;

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
 */
public record GapCounts(List<Integer> gaps, List<Integer> moved) {
    static final int BINS = 20;
    static final GapCounts NONE = new GapCounts(Collections.nCopies(BINS, 0), Collections.nCopies(BINS, 0));

    private static final int USUAL_BIN = 8;
    private static final double BINS_A_DOUBLING = 2;
    /** Before anything is counted, as if seen in two gaps: one gap in four of the usual length is a move. */
    private static final double[] PRIOR = {-1.2, 1};

    private static final double PRIOR_WEIGHT = 2;

    public GapCounts {
        gaps = List.copyOf(gaps);
        moved = List.copyOf(moved);
    }

    static int bin(double gap, double usual) {
        double doublings = Math.log(Math.max(gap, 1e-6) / usual) / Math.log(2);
        int bin = USUAL_BIN + (int) Math.floor(doublings * BINS_A_DOUBLING);
        return Math.max(0, Math.min(BINS - 1, bin));
    }

    int total() {
        return gaps.stream().mapToInt(Integer::intValue).sum();
    }

    GapCounts plus(GapCounts other) {
        List<Integer> allGaps = new ArrayList<>();
        List<Integer> allMoved = new ArrayList<>();
        for (int i = 0; i < BINS; i++) {
            allGaps.add(gaps.get(i) + other.gaps.get(i));
            allMoved.add(moved.get(i) + other.moved.get(i));
        }
        return new GapCounts(allGaps, allMoved);
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
    static double usual(double[] gapsSeconds) {
        double[] sorted = gapsSeconds.clone();
        Arrays.sort(sorted);
        return sorted.length == 0 ? 1 : Math.max(sorted[sorted.length / 2], 0.5);
    }
}
