package quarterlight.photo.film;

/**
 * How loud a sound is along its time, for drawing: the root mean square of each stretch in decibels below the loudest sample that can be, 0 for 60 dB below and
 * less, 255 for the loudest.
 */
public final class Loudness {
    /** Stretches a second. */
    public static final int PER_SECOND = 25;

    private static final double FLOOR_DB = -60;
    private static final double LOUDEST = 32_768;
    private static final int MOST = 255;

    private Loudness() {}

    /**
     * The loudness of samples.
     *
     * @param samples one channel of 16 bits, low byte first
     * @param rate samples a second, a multiple of {@link #PER_SECOND}
     * @return a byte, 0 to 255, for each stretch; what is left at the end counts as one
     */
    public static byte[] of(byte[] samples, int rate) {
        int stretch = rate / PER_SECOND;
        int count = samples.length / 2;
        byte[] loud = new byte[(count + stretch - 1) / stretch];
        for (int i = 0; i < loud.length; i++) {
            int from = i * stretch;
            int until = Math.min(count, from + stretch);
            double sum = 0;
            for (int k = from; k < until; k++) {
                int sample = samples[2 * k + 1] << 8 | samples[2 * k] & 0xFF;
                sum += (double) sample * sample;
            }
            double db = 10 * Math.log10(Math.max(1e-12, sum / (until - from)) / (LOUDEST * LOUDEST));
            double share = Math.max(0, Math.min(1, 1 - db / FLOOR_DB));
            loud[i] = (byte) Math.round(share * MOST);
        }
        return loud;
    }
}
