package quarterlight.finish;

/**
 * Evenly spaced points of the natural logarithm of a thickness in mil, on the lattice that all unknowns share: point i
 * lies at {@code (first + i * stride) * step}. Immutable.
 *
 * @param first lattice index of point 0; the lattice has a point at log 1 mil = 0
 * @param stride lattice steps between points
 * @param count number of points
 * @param step lattice step
 */
record Axis(int first, int stride, int count, double step) {
    /** An axis that covers lo to hi (natural logarithms). */
    static Axis covering(double lo, double hi, int stride, double step) {
        int first = (int) Math.floor(lo / step);
        int count = (int) Math.ceil((hi / step - first) / stride) + 1;
        return new Axis(first, stride, count, step);
    }

    /** An axis that covers a law to {@code tails} standard deviations either side of its median. */
    static Axis of(LogNormal law, double tails, int stride, double step) {
        double reach = tails * law.logSd();
        return covering(law.logMedian() - reach, law.logMedian() + reach, stride, step);
    }

    int index(int i) {
        return first + i * stride;
    }

    double log(int i) {
        return index(i) * step;
    }

    /** Weights of the points under a normal law of the logarithm; they sum to 1. */
    double[] weights(double mean, double sd) {
        double[] weights = new double[count];
        double sum = 0;
        for (int i = 0; i < count; i++) {
            double z = (log(i) - mean) / sd;
            weights[i] = Math.exp(-0.5 * z * z);
            sum += weights[i];
        }
        for (int i = 0; i < count; i++) {
            weights[i] /= sum;
        }
        return weights;
    }
}
