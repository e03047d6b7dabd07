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
            int thousandths = 299 * (rgb >> 16 & 255) + 587 * (rgb >> 8 & 255) + 114 * (rgb & 255) + 500;
            // divided by 8 and by 125, whose reciprocal is exact to here: multiplying is many values at a time,
            // dividing is not
            grey[i] = (thousandths >> 3) * 33_555 >> 22;
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

    Laplacian laplacian() {
        return new Laplacian();
    }

    /** The responses of the kernel 0 1 0 / 1 -4 1 / 0 1 0, row by row, the picture mirrored about its outermost pixels (reflect-101). */
    final class Laplacian {
        private final int[] center = new int[width];
        private final int[] left = new int[width];
        private final int[] right = new int[width];
        private final int[] above = new int[width];
        private final int[] below = new int[width];
        private final int[] responses = new int[width];

        /** As many as the picture is wide; valid until the next row is asked for. */
        int[] row(int row) {
            line(row, center);
            line(mirrored(row - 1, height), above);
            line(mirrored(row + 1, height), below);
            System.arraycopy(center, 0, left, 1, width - 1);
            left[0] = center[mirrored(-1, width)];
            System.arraycopy(center, 1, right, 0, width - 1);
            right[width - 1] = center[mirrored(width, width)];
            // all are read at the same place, so that the Java machine works on several values at a time
            for (int x = 0; x < width; x++) {
                responses[x] = left[x] + right[x] + above[x] + below[x] - 4 * center[x];
            }
            return responses;
        }

        private void line(int row, int[] line) {
            System.arraycopy(values, row * width, line, 0, width);
        }
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
