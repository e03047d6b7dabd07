package quarterlight.photo.speech;

/** Where a long sound is cut so that no word is: at the quietest tenth of a second near the end of what can be heard at once. Pure. */
public final class QuietCut {
    private QuietCut() {}

    /**
     * The place to cut, as a number of samples.
     *
     * @param samples 16 bits, low byte first
     * @param earliest share of the samples before which it is not cut, 0 to 1
     * @return all of them if they are fewer than two tenths of a second
     */
    public static int of(byte[] samples, int rate, double earliest) {
        int count = samples.length / 2;
        int window = rate / 10;
        int best = count;
        double least = Double.POSITIVE_INFINITY;
        for (int from = (int) (count * earliest); from + window <= count; from += window / 2) {
            double sum = 0;
            for (int i = from; i < from + window; i++) {
                int sample = samples[2 * i + 1] << 8 | samples[2 * i] & 0xFF;
                sum += (double) sample * sample;
            }
            if (sum <= least) {
                least = sum;
                best = from + window / 2;
            }
        }
        return count < 2 * window ? count : best;
    }
}
