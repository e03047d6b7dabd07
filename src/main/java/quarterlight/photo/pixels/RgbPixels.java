package quarterlight.photo.pixels;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.Arrays;

/** The pixels of pictures of type {@link BufferedImage#TYPE_INT_RGB} as 0xRRGGBB, row-major, without a copy; and their reduction by means of areas. */
public final class RgbPixels {
    private static final int[] CHANNELS = {16, 8, 0};

    private RgbPixels() {}

    public static int[] of(BufferedImage picture) {
        if (picture.getType() != BufferedImage.TYPE_INT_RGB) {
            throw new IllegalArgumentException("a picture of type " + picture.getType());
        }
        return ((DataBufferInt) picture.getRaster().getDataBuffer()).getData();
    }

    /** Reduced so that each pixel is the mean of the area it covers, rounded half up; a source pixel on a border counts by its share. */
    public static BufferedImage reduced(BufferedImage picture, int width, int height) {
        Reduction reduction = new Reduction(picture.getWidth(), picture.getHeight(), width, height);
        BufferedImage small = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int shift : CHANNELS) {
            reduction.add(of(picture), shift, of(small));
        }
        return small;
    }

    /** The same of grey values 0 to 255, row-major. */
    public static int[] reduced(int[] grey, int fromWidth, int fromHeight, int width, int height) {
        int[] small = new int[width * height];
        new Reduction(fromWidth, fromHeight, width, height).add(grey, 0, small);
        return small;
    }

    /**
     * From one size to another. Shares are whole numbers: a source row is as many units tall as the target has rows, and a target row as many as
     * the source has, columns likewise, so that the sums are exact.
     */
    private static final class Reduction {
        private final Shares columns;
        private final Shares rows;
        private final double one;

        private Reduction(int fromWidth, int fromHeight, int width, int height) {
            if (width > fromWidth || height > fromHeight || width < 1 || height < 1) {
                throw new IllegalArgumentException("no reduction");
            }
            columns = new Shares(fromWidth, width);
            rows = new Shares(fromHeight, height);
            one = 1.0 / ((double) fromWidth * fromHeight);
        }

        /** Adds the reduced values of the 8 bits at {@code shift} to the target, whose bits there are 0. */
        private void add(int[] source, int shift, int[] target) {
            int[] sums = new int[columns.from];
            int[] line = new int[columns.from];
            for (int row = 0; row < rows.to; row++) {
                Arrays.fill(sums, 0);
                for (int y = rows.first[row]; y <= rows.last[row]; y++) {
                    System.arraycopy(source, y * columns.from, line, 0, line.length);
                    sum(line, shift, rows.of(row, y), sums);
                }
                int start = row * columns.to;
                for (int column = 0; column < columns.to; column++) {
                    target[start + column] |= (int) (columns.total(sums, column) * one + 0.5) << shift;
                }
            }
        }

        /** Both arrays are read at the same place: so the Java machine works on several values at a time, within a picture it does not. */
        private static void sum(int[] line, int shift, int share, int[] sums) {
            for (int x = 0; x < sums.length; x++) {
                sums[x] += share * (line[x] >> shift & 255);
            }
        }
    }

    /** Which source pixels each target pixel covers: the first by its share, those between in full, the last by its share (0 where it is the first). */
    private static final class Shares {
        private final int from;
        private final int to;
        private final int[] first;
        private final int[] last;
        private final int[] head;
        private final int[] tail;

        private Shares(int from, int to) {
            this.from = from;
            this.to = to;
            first = new int[to];
            last = new int[to];
            head = new int[to];
            tail = new int[to];
            for (int pixel = 0; pixel < to; pixel++) {
                long left = (long) pixel * from;
                long right = left + from;
                first[pixel] = (int) (left / to);
                last[pixel] = (int) ((right - 1) / to);
                boolean alone = first[pixel] == last[pixel];
                head[pixel] = (int) (alone ? from : (first[pixel] + 1L) * to - left);
                tail[pixel] = (int) (alone ? 0 : right - (long) last[pixel] * to);
            }
        }

        private long total(int[] values, int pixel) {
            int start = first[pixel];
            int end = last[pixel];
            long sum = (long) head[pixel] * values[start] + (long) tail[pixel] * values[end];
            for (int x = start + 1; x < end; x++) {
                sum += (long) to * values[x];
            }
            return sum;
        }

        /** The share of one source pixel. */
        private int of(int pixel, int source) {
            return source == first[pixel] ? head[pixel] : source == last[pixel] ? tail[pixel] : to;
        }
    }
}
