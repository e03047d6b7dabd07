package quarterlight.photo;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;

/** The pixels of pictures of type {@link BufferedImage#TYPE_INT_RGB} as 0xRRGGBB, row-major, without a copy; and their reduction by means of areas. */
final class RgbPixels {
    private static final int CHANNELS = 3;

    private RgbPixels() {}

    static int[] of(BufferedImage picture) {
        if (picture.getType() != BufferedImage.TYPE_INT_RGB) {
            throw new IllegalArgumentException("a picture of type " + picture.getType());
        }
        return ((DataBufferInt) picture.getRaster().getDataBuffer()).getData();
    }

    /** Reduced so that each pixel is the mean of the area it covers; a source pixel on a border counts by its share. */
    static BufferedImage reduced(BufferedImage picture, int width, int height) {
        int fromWidth = picture.getWidth();
        int fromHeight = picture.getHeight();
        if (width > fromWidth || height > fromHeight || width < 1 || height < 1) {
            throw new IllegalArgumentException("no reduction");
        }
        BufferedImage small = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        int[] source = of(picture);
        int[] target = of(small);
        Shares columns = new Shares(fromWidth, width);
        float[] line = new float[CHANNELS * width];
        float[] sums = new float[CHANNELS * width];
        double tall = (double) fromHeight / height;
        float area = (float) (tall * fromWidth / width);
        int row = 0;
        for (int y = 0; y < fromHeight; y++) {
            across(source, y * fromWidth, columns, line);
            double bottom = (row + 1) * tall;
            float above = (float) Math.min(1, bottom - y);
            add(sums, line, above);
            if (y + 1 >= bottom - 1e-9 || y == fromHeight - 1) {
                emit(sums, area, target, row * width, width);
                row++;
                java.util.Arrays.fill(sums, 0);
                if (row < height && above < 1) {
                    add(sums, line, 1 - above);
                }
            }
        }
        return small;
    }

    private static void across(int[] source, int start, Shares columns, float[] line) {
        int out = 0;
        for (int column = 0; column < columns.first.length; column++) {
            int from = start + columns.first[column];
            int to = start + columns.last[column];
            int rgb = source[from];
            float share = columns.head[column];
            float red = share * (rgb >> 16 & 255);
            float green = share * (rgb >> 8 & 255);
            float blue = share * (rgb & 255);
            for (int x = from + 1; x < to; x++) {
                rgb = source[x];
                red += rgb >> 16 & 255;
                green += rgb >> 8 & 255;
                blue += rgb & 255;
            }
            rgb = source[to];
            share = columns.tail[column];
            line[out++] = red + share * (rgb >> 16 & 255);
            line[out++] = green + share * (rgb >> 8 & 255);
            line[out++] = blue + share * (rgb & 255);
        }
    }

    /** Which source pixels each column covers: the first by its share, those between in full, the last by its share (0 where it is the first). */
    private static final class Shares {
        private final int[] first;
        private final int[] last;
        private final float[] head;
        private final float[] tail;

        private Shares(int from, int to) {
            first = new int[to];
            last = new int[to];
            head = new float[to];
            tail = new float[to];
            for (int column = 0; column < to; column++) {
                // the borders are the quotients of whole numbers, so that rounding moves none of them over a pixel
                double left = (double) ((long) column * from) / to;
                double right = (double) ((long) (column + 1) * from) / to;
                first[column] = (int) left;
                last[column] = Math.max(first[column], (int) Math.ceil(right) - 1);
                boolean one = first[column] == last[column];
                head[column] = (float) (one ? right - left : first[column] + 1 - left);
                tail[column] = (float) (one ? 0 : right - last[column]);
            }
        }
    }

    private static void add(float[] sums, float[] line, float weight) {
        for (int i = 0; i < sums.length; i++) {
            sums[i] += weight * line[i];
        }
    }

    private static void emit(float[] sums, float area, int[] target, int start, int width) {
        for (int column = 0; column < width; column++) {
            int red = level(sums[CHANNELS * column] / area);
            int green = level(sums[CHANNELS * column + 1] / area);
            int blue = level(sums[CHANNELS * column + 2] / area);
            target[start + column] = red << 16 | green << 8 | blue;
        }
    }

    /** Rounded half up, which for values that are not negative needs no more than a cast. */
    private static int level(float value) {
        return Math.min(255, (int) (value + 0.5f));
    }
}
