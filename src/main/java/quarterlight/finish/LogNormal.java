package quarterlight.finish;

/**
 * A log-normal law of a thickness.
 *
 * @param medianMil median in mil (1 mil = 25.4 um), above 0
 * @param logSd standard deviation of the natural logarithm, above 0
 */
public record LogNormal(double medianMil, double logSd) {
    private static final double SQRT_TWO_PI = Math.sqrt(2 * Math.PI);

    public LogNormal {
        if (!(medianMil > 0) || !(logSd > 0) || Double.isInfinite(medianMil) || Double.isInfinite(logSd)) {
            throw new IllegalArgumentException(
                    "a log-normal law needs a median and a log-sd above 0, not " + medianMil + " and " + logSd);
        }
    }

    double logMedian() {
        return Math.log(medianMil);
    }

    /** Density of the natural logarithm at {@code x}; per unit of logarithm. */
    double densityOfLog(double x) {
        return normal(x, logMedian(), logSd);
    }

    /** Density of the normal law at x. */
    static double normal(double x, double mean, double sd) {
        double z = (x - mean) / sd;
        return Math.exp(-0.5 * z * z) / (sd * SQRT_TWO_PI);
    }
}
