package quarterlight.finish;

import java.util.HashMap;
import java.util.Map;

/**
 * The law of log(f + a), where f is the thickness of a factory finish and a that of the coat on it, both log-normal.
 * <p>Only the ratio of their medians matters: the law moves with the level. One kernel for each ratio needed, about the
 * log of the factory level. Each is the integral over the logarithm of the smaller of the two, in which the integrand is
 * smooth: p(x) = ∫ φ(u) φ(log(e^x - e^u)) e^x / (e^x - e^u) du, by the trapezoid rule with two lattice steps, whose error
 * for normal laws is below 1e-9 when the step is below a quarter of their spread.
 */
final class CoatOnFinish {
    private static final double TAILS = 5.5;
    private static final int STRIDE = 2;

    private final double finishSd;
    private final double coatSd;
    private final double step;
    private final double[] logShare;
    private final Map<Integer, Kernel> kernels = new HashMap<>();

    /**
     * @param levels axis of the factory level
     * @param coats axis of the coat
     */
    CoatOnFinish(Axis levels, Axis coats, double finishSd, double coatSd) {
        this.finishSd = finishSd;
        this.coatSd = coatSd;
        this.step = levels.step();
        this.logShare = logShares(1 + (int) Math.ceil(12 / step), step);
        for (int i = 0; i < levels.count(); i++) {
            for (int j = 0; j < coats.count(); j++) {
                kernels.computeIfAbsent(coats.index(j) - levels.index(i), this::kernel);
            }
        }
    }

    /** The kernel for a coat whose log median lies {@code ratio} lattice steps above that of the finish. */
    Kernel of(int ratio) {
        return kernels.get(ratio);
    }

    /** Entry n: log(1 - e^(-n step)), the log of the share of the larger part when the smaller is n steps below the sum. */
    private static double[] logShares(int count, double step) {
        double[] shares = new double[count];
        shares[0] = Double.NEGATIVE_INFINITY;
        for (int n = 1; n < count; n++) {
            shares[n] = Math.log(-Math.expm1(-n * step));
        }
        return shares;
    }

    private Kernel kernel(int ratio) {
        boolean coatIsSmaller = ratio < 0;
        int smallAt = coatIsSmaller ? ratio : 0;
        double smallSd = coatIsSmaller ? coatSd : finishSd;
        int largeAt = coatIsSmaller ? 0 : ratio;
        double largeSd = coatIsSmaller ? finishSd : coatSd;
        double coat = Math.exp(ratio * step);
        double center = Math.log1p(coat);
        double sd = Math.hypot(finishSd, coatSd * coat) / (1 + coat);
        int low = (int) Math.floor((center - TAILS * sd) / step);
        int high = (int) Math.ceil((center + TAILS * sd) / step);
        double[] weights = new double[high - low + 1];
        int reach = (int) Math.ceil(TAILS * smallSd / step / STRIDE);
        double sum = 0;
        for (int t = 0; t < weights.length; t++) {
            int x = low + t;
            double density = 0;
            for (int v = -reach; v <= reach; v++) {
                int below = x - smallAt - v * STRIDE;
                if (below > 0) {
                    double share = below < logShare.length ? logShare[below] : 0;
                    double zSmall = v * STRIDE * step / smallSd;
                    double zLarge = ((x - largeAt) * step + share) / largeSd;
                    density += Math.exp(-0.5 * (zSmall * zSmall + zLarge * zLarge) - share);
                }
            }
            weights[t] = density;
            sum += density;
        }
        for (int t = 0; t < weights.length; t++) {
            weights[t] /= sum;
        }
        return new Kernel(low, weights);
    }
}
