package quarterlight.finish;

/**
 * Weights of the log level of a panel about a lattice point: entry t belongs to the point {@code low + t} lattice steps
 * away. They sum to 1.
 */
final class Kernel {
    private final int low;
    private final double[] weights;

    Kernel(int low, double[] weights) {
        this.low = low;
        this.weights = weights;
    }

    int low() {
        return low;
    }

    double[] weights() {
        return weights;
    }

    /** A normal law about the point itself. */
    static Kernel normal(double sd, double step) {
        int reach = (int) Math.ceil(7 * sd / step);
        Axis axis = new Axis(-reach, 1, 2 * reach + 1, step);
        return new Kernel(-reach, axis.weights(0, sd));
    }
}
