package quarterlight.thickness;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * A step of thickness within a panel by the place of its spots: the straight edge, upright or level, that parts them best.
 * A tape edge or the end of a blend looks like one.
 * <p>Of all edges with two spots and more on either side the one with the largest |t| (two samples, pooled variance) is
 * taken. Since it is the best of many, its chance is found by permutation: how often spots dealt to the places anew, in
 * 999 seeded deals, show as large a |t|. Source of the test: E. S. Edgington, Randomization Tests (from memory).
 *
 * @param alongX true if the edge is upright: it parts by x; else by y
 * @param at where, as a fraction of the view
 * @param stepUm mean beyond the edge less mean before it
 * @param t the statistic; very large where neither side scatters
 * @param p chance of as large a statistic if places mean nothing, at least 0.001
 */
public record PlaceStep(boolean alongX, double at, double stepUm, double t, double p) {
    /** Fewer spots cannot show a step. */
    public static final int MIN_SPOTS = 6;

    private static final int DEALS = 999;
    private static final long SEED = 6;

    /** @return empty for fewer than {@link #MIN_SPOTS} spots, or where all lie at one place */
    public static Optional<PlaceStep> of(double[] x, double[] y, double[] um) {
        if (um.length < MIN_SPOTS) {
            return Optional.empty();
        }
        int[] byX = order(x);
        int[] byY = order(y);
        Optional<PlaceStep> alongX = best(byX, x, um, true);
        Optional<PlaceStep> alongY = best(byY, y, um, false);
        Optional<PlaceStep> found = alongX.isEmpty()
                        || alongY.isPresent() && alongY.get().t() > alongX.get().t()
                ? alongY
                : alongX;
        return found.map(step -> {
            SplittableRandom random = new SplittableRandom(SEED);
            double[] dealt = um.clone();
            int asLarge = 0;
            for (int deal = 0; deal < DEALS; deal++) {
                shuffle(dealt, random);
                double largest = Math.max(
                        best(byX, x, dealt, true).map(PlaceStep::t).orElse(0.0),
                        best(byY, y, dealt, false).map(PlaceStep::t).orElse(0.0));
                asLarge += largest >= step.t() - 1e-9 ? 1 : 0;
            }
            return new PlaceStep(step.alongX, step.at, step.stepUm, step.t, (asLarge + 1) / (DEALS + 1.0));
        });
    }

    private static int[] order(double[] place) {
        return IntStream.range(0, place.length)
                .boxed()
                .sorted(Comparator.comparingDouble(n -> place[n]))
                .mapToInt(n -> n)
                .toArray();
    }

    private static void shuffle(double[] values, SplittableRandom random) {
        for (int n = values.length - 1; n > 0; n--) {
            int k = random.nextInt(n + 1);
            double kept = values[n];
            values[n] = values[k];
            values[k] = kept;
        }
    }

    private static Optional<PlaceStep> best(int[] order, double[] place, double[] um, boolean alongX) {
        PlaceStep best = null;
        for (int cut = 2; cut <= order.length - 2; cut++) {
            double before = place[order[cut - 1]];
            double beyond = place[order[cut]];
            if (beyond > before) {
                double[] low = pick(order, um, 0, cut);
                double[] high = pick(order, um, cut, order.length);
                double t = Math.abs(pooledT(low, high));
                if (best == null || t > best.t) {
                    best = new PlaceStep(alongX, (before + beyond) / 2, mean(high) - mean(low), t, 1);
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private static double[] pick(int[] order, double[] um, int from, int to) {
        return Arrays.stream(order, from, to).mapToDouble(n -> um[n]).toArray();
    }

    /** Student's t of two samples with one variance; b less a. */
    static double pooledT(double[] a, double[] b) {
        double difference = mean(b) - mean(a);
        double pooled = (squares(a) + squares(b)) / (a.length + b.length - 2);
        double error = Math.sqrt(pooled * (1.0 / a.length + 1.0 / b.length));
        return error > 0 ? difference / error : difference == 0 ? 0 : Math.signum(difference) * 1e9;
    }

    private static double mean(double[] values) {
        return Arrays.stream(values).average().orElseThrow();
    }

    private static double squares(double[] values) {
        double mean = mean(values);
        return Arrays.stream(values).map(v -> (v - mean) * (v - mean)).sum();
    }
}
