package quarterlight.capture;

/**
 * A grey picture; immutable.
 * <p>Shape: {@code width x height}, row-major, each value 0 (black) to 255 (white).
 */
public final class GreyPicture {
    private final int width;
    private final int height;
    private final int[] values;

    /** @throws IllegalArgumentException if the picture is empty or the number of values is another */
    public GreyPicture(int width, int height, int[] values) {
        if (width < 1 || height < 1 || values.length != width * height) {
            throw new IllegalArgumentException(width + " x " + height + " pixels are not " + values.length + " values");
        }
        this.width = width;
        this.height = height;
        this.values = values.clone();
    }

    /**
     * Of colors 0xRRGGBB, see {@link #lumaOfSrgb}.
     *
     * @param srgb row-major, {@code width x height}
     */
    public static GreyPicture ofSrgb(int width, int height, int[] srgb) {
        return new GreyPicture(width, height, lumaOfSrgb(srgb));
    }

    /** The luma 0 to 255 of colors 0xRRGGBB by the weights of ITU-R BT.601 (0.299, 0.587, 0.114), rounded. */
    public static int[] lumaOfSrgb(int[] srgb) {
        int[] grey = new int[srgb.length];
        for (int i = 0; i < srgb.length; i++) {
            int rgb = srgb[i];
            grey[i] = (299 * (rgb >> 16 & 255) + 587 * (rgb >> 8 & 255) + 114 * (rgb & 255) + 500) / 1000;
        }
        return grey;
    }

    public int width() {
        return width;
    }

    public int height() {
        return height;
    }

    public int at(int x, int y) {
        return values[y * width + x];
    }

    /**
     * The response of the kernel 0 1 0 / 1 -4 1 / 0 1 0 along a row, the picture mirrored about its outermost pixels (reflect-101).
     *
     * @param responses as many as the picture is wide; set
     */
    void laplacian(int row, int[] responses) {
        int middle = row * width;
        int above = mirrored(row - 1, height) * width;
        int below = mirrored(row + 1, height) * width;
        responses[0] = response(middle, above, below, 0, mirrored(-1, width), mirrored(1, width));
        for (int x = 1; x < width - 1; x++) {
            responses[x] = response(middle, above, below, x, x - 1, x + 1);
        }
        int end = width - 1;
        responses[end] = response(middle, above, below, end, mirrored(end - 1, width), mirrored(width, width));
    }

    /** Rows by where they begin among the values. */
    private int response(int middle, int above, int below, int x, int left, int right) {
        return values[middle + left]
                + values[middle + right]
                + values[above + x]
                + values[below + x]
                - 4 * values[middle + x];
    }

    private static int mirrored(int at, int length) {
        if (length == 1) {
            return 0;
        }
        return at < 0 ? -at : at >= length ? 2 * (length - 1) - at : at;
    }

    /** The mean over each cell of a grid laid over the picture; a pixel on a border counts by its share. */
    double[] means(int columns, int rows) {
        double[] means = new double[columns * rows];
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                means[row * columns + column] = mean(
                        (double) width * column / columns,
                        (double) width * (column + 1) / columns,
                        (double) height * row / rows,
                        (double) height * (row + 1) / rows);
            }
        }
        return means;
    }

    private double mean(double left, double right, double top, double bottom) {
        double sum = 0;
        double weight = 0;
        int from = (int) left;
        int to = (int) Math.min(width, Math.ceil(right)) - 1;
        for (int y = (int) top; y < Math.min(height, Math.ceil(bottom)); y++) {
            double tall = Math.min(y + 1, bottom) - Math.max(y, top);
            double line = 0;
            for (int x = from; x <= to; x++) {
                line += at(x, y);
            }
            // the two pixels on the borders count by their shares only
            double before = left - from;
            double after = to + 1 - Math.min(to + 1, right);
            sum += tall * (line - before * at(from, y) - after * at(to, y));
            weight += tall * (to + 1 - from - before - after);
        }
        return sum / weight;
    }
}
