package quarterlight.walk;

import java.util.List;

/**
 * How well the probability said of the first suggestion fits how often it was right: in ten equal bins, the mean difference of
 * what was said and what was so, each bin counting by its photos (expected calibration error).
 */
public final class Reliability {
    private static final int BINS = 10;

    private final double[] said = new double[BINS];
    private final int[] right = new int[BINS];
    private final int[] count = new int[BINS];

    void add(double p, boolean isRight) {
        int bin = Math.min(BINS - 1, (int) (p * BINS));
        said[bin] += p;
        right[bin] += isRight ? 1 : 0;
        count[bin]++;
    }

    static Reliability together(List<Reliability> all) {
        Reliability sum = new Reliability();
        for (Reliability one : all) {
            for (int bin = 0; bin < BINS; bin++) {
                sum.said[bin] += one.said[bin];
                sum.right[bin] += one.right[bin];
                sum.count[bin] += one.count[bin];
            }
        }
        return sum;
    }

    /** The mean difference, 0 to 1; 0 if nothing was said. */
    public double error() {
        double off = 0;
        int all = 0;
        for (int bin = 0; bin < BINS; bin++) {
            off += Math.abs(said[bin] - right[bin]);
            all += count[bin];
        }
        return all == 0 ? 0 : off / all;
    }

    /** What was said less what was so, over all: above 0 is too sure. */
    double tooSure() {
        double sum = 0;
        int all = 0;
        for (int bin = 0; bin < BINS; bin++) {
            sum += said[bin] - right[bin];
            all += count[bin];
        }
        return all == 0 ? 0 : sum / all;
    }
}
