package quarterlight.finish.number;

/**
 * The grid of log thickness (natural logarithm of mil) on which levels of panels are integrated, and the normal kernels
 * that spread a level. A kernel is used at the nearest of its widths.
 */
public final class Lattice {
    static final double LOW = Math.log(.5);
    public static final double STEP = .045;
    private static final double PER_STEP = 1 / STEP;
    public static final int POINTS = (int) Math.ceil((Math.log(60) - LOW) / STEP) + 1;
    private static final double[] WIDTHS = {.04, .06, .085, .12, .17, .24, .34, .48};
    private static final double[][] KERNELS = kernels();
    private static final double SQRT_TWO_PI = Math.sqrt(2 * Math.PI);

    private Lattice() {}

    public static double at(int point) {
        return LOW + point * STEP;
    }

    public static int widths() {
        return WIDTHS.length;
    }

    /** The kernel whose width is nearest to this standard deviation. */
    public static int width(double sd) {
        return nearest(WIDTHS, sd);
    }

    /** The entry nearest in ratio. */
    public static int nearest(double[] among, double value) {
        int best = 0;
        for (int n = 1; n < among.length; n++) {
            if (Math.abs(Math.log(among[n] / value)) < Math.abs(Math.log(among[best] / value))) {
                best = n;
            }
        }
        return best;
    }

    /** The mean of a function of the level where the level is normal about each point. */
    public static double[] smoothed(double[] values, int width) {
        double[] kernel = KERNELS[width];
        int reach = kernel.length / 2;
        double[] out = new double[POINTS];
        for (int c = 0; c < POINTS; c++) {
            double sum = 0;
            int from = Math.max(0, c - reach);
            int to = Math.min(POINTS - 1, c + reach);
            for (int k = from; k <= to; k++) {
                sum += kernel[k - c + reach] * values[k];
            }
            out[c] = sum;
        }
        return out;
    }

    /** Where a level lies between the points, for {@link #look}; at the ends the end. */
    public static double place(double level) {
        return Math.max(0, Math.min(POINTS - 1, (level - LOW) * PER_STEP));
    }

    /** Between two points along a straight line. */
    public static double look(double[] values, double place) {
        int below = Math.min(POINTS - 2, (int) place);
        return values[below] + (place - below) * (values[below + 1] - values[below]);
    }

    public static double normal(double x, double mean, double sd) {
        double z = (x - mean) / sd;
        return Math.exp(-.5 * z * z) / (sd * SQRT_TWO_PI);
    }

    private static double[][] kernels() {
        double[][] all = new double[WIDTHS.length][];
        for (int n = 0; n < WIDTHS.length; n++) {
            int reach = (int) Math.ceil(3.5 * WIDTHS[n] / STEP);
            double[] kernel = new double[2 * reach + 1];
            double sum = 0;
            for (int k = -reach; k <= reach; k++) {
                double z = k * STEP / WIDTHS[n];
                kernel[k + reach] = Math.exp(-.5 * z * z);
                sum += kernel[k + reach];
            }
            for (int k = 0; k < kernel.length; k++) {
                kernel[k] /= sum;
            }
            all[n] = kernel;
        }
        return all;
    }
}
