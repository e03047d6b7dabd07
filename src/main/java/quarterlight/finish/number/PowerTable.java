package quarterlight.finish.number;

/**
 * A power of positive numbers by a table: the sums over the states of a car ask for some millions of them. Exponent and fraction of the number go
 * apart, the fraction along straight lines between 4,096 points, so that the answer is right to one part in 100 million. Immutable.
 */
public final class PowerTable {
    private static final int BITS = 12;
    private static final int POINTS = 1 << BITS;
    private static final int FRACTION = 52;
    private static final long REST = (1L << (FRACTION - BITS)) - 1;
    private static final double PER_POINT = 1.0 / (1L << (FRACTION - BITS));
    private static final int EXPONENTS = 2048;
    private static final int ZERO = 1023;

    private final double[] ofExponent = new double[EXPONENTS];
    private final double[] ofFraction = new double[POINTS + 1];

    public PowerTable(double power) {
        for (int e = 1; e < EXPONENTS - 1; e++) {
            ofExponent[e] = Math.pow(2, power * (e - ZERO));
        }
        for (int k = 0; k <= POINTS; k++) {
            ofFraction[k] = Math.pow(1 + (double) k / POINTS, power);
        }
    }

    /** @param x a normal number above 0: 1e-300 and 1e300 are */
    public double of(double x) {
        long bits = Double.doubleToRawLongBits(x);
        int point = (int) (bits >>> (FRACTION - BITS)) & (POINTS - 1);
        double below = ofFraction[point];
        double part = (bits & REST) * PER_POINT;
        return ofExponent[(int) (bits >>> FRACTION)] * (below + part * (ofFraction[point + 1] - below));
    }
}
