package quarterlight.capture;

/**
 * Sharpness as the variance of the Laplacian: a hint, to be compared within one visit and never an absolute verdict, since it depends on
 * what the picture shows.
 * <p>Kernel 0 1 0 / 1 -4 1 / 0 1 0 on grey values; at the border the picture is mirrored about its outermost pixels (reflect-101);
 * population variance. Source: Pech-Pacheco et al., ICPR 2000 (from memory); Pertuz, Puig, Garcia, Pattern Recognition 2013, measure LAPV.
 */
public final class Sharpness {
    /** Every picture is brought to this length of its long side first, pixels, so that scores of different cameras can be compared. */
    public static final int LONG_SIDE = 480;

    /** Pixels whose squared responses, each at most 1020 squared, add up in an int. */
    private static final int PART = 1024;

    private Sharpness() {}

    /**
     * @param picture scaled to {@link #LONG_SIDE} by the caller
     * @return variance of the response, in squared grey levels, 0 or more; 0 for a flat picture
     */
    public static double of(GreyPicture picture) {
        int width = picture.width();
        int height = picture.height();
        long count = (long) width * height;
        long sum = 0;
        long squares = 0;
        GreyPicture.Laplacian laplacian = picture.laplacian();
        for (int y = 0; y < height; y++) {
            int[] responses = laplacian.row(y);
            for (int start = 0; start < width; start += PART) {
                int end = Math.min(width, start + PART);
                int part = 0;
                int partSquares = 0;
                for (int x = start; x < end; x++) {
                    part += responses[x];
                    partSquares += responses[x] * responses[x];
                }
                sum += part;
                squares += partSquares;
            }
        }
        // exact in integers: n * squares - sum^2 stays below 2^63 for pictures up to 1.7 million pixels
        return count <= 1_700_000
                ? (double) (count * squares - sum * sum) / ((double) count * count)
                : (double) squares / count - Math.pow((double) sum / count, 2);
    }
}
