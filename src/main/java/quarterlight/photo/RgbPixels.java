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
        float[] line = new float[CHANNELS * width];
        float[] sums = new float[CHANNELS * width];
        double tall = (double) fromHeight / height;
        float area = (float) (tall * fromWidth / width);
        int row = 0;
        for (int y = 0; y < fromHeight; y++) {
            across(source, y * fromWidth, fromWidth, line, width);
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

    private static void across(int[] source, int start, int fromWidth, float[] line, int width) {
        float wide = (float) fromWidth / width;
        int x = 0;
        float left = 1;
        for (int column = 0; column < width; column++) {
            float red = 0;
            float green = 0;
            float blue = 0;
            float missing = wide;
            while (missing > 1e-4f && x < fromWidth) {
                int rgb = source[start + x];
                float share = Math.min(left, missing);
                red += share * (rgb >> 16 & 255);
                green += share * (rgb >> 8 & 255);
                blue += share * (rgb & 255);
                missing -= share;
                left -= share;
                if (left <= 1e-4f) {
                    x++;
                    left = 1;
                }
            }
            line[CHANNELS * column] = red;
            line[CHANNELS * column + 1] = green;
            line[CHANNELS * column + 2] = blue;
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

    private static int level(float value) {
        return Math.max(0, Math.min(255, Math.round(value)));
    }
}
