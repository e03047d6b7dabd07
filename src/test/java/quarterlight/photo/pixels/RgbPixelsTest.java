package quarterlight.photo.pixels;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.util.Random;
import org.junit.jupiter.api.Test;

class RgbPixelsTest {
    /** Against the definition: the mean over the area, each source pixel by the share that lies in it. */
    @Test
    void eachPixelIsTheMeanOfTheAreaItCovers() {
        Random random = new Random(7);
        int[][] sizes = {
            {12, 9, 4, 3}, {504, 378, 480, 360}, {101, 67, 37, 23}, {5, 5, 1, 1}, {7, 3, 7, 2}, {640, 1, 320, 1}
        };
        for (int[] size : sizes) {
            BufferedImage picture = new BufferedImage(size[0], size[1], BufferedImage.TYPE_INT_RGB);
            int[] pixels = RgbPixels.of(picture);
            for (int i = 0; i < pixels.length; i++) {
                pixels[i] = random.nextInt(1 << 24);
            }
            BufferedImage small = RgbPixels.reduced(picture, size[2], size[3]);
            for (int probe = 0; probe < 200; probe++) {
                int x = random.nextInt(size[2]);
                int y = random.nextInt(size[3]);
                for (int shift = 0; shift <= 16; shift += 8) {
                    double mean = mean(picture, size[2], size[3], x, y, shift);
                    assertThat((small.getRGB(x, y) >> shift & 255) - mean)
                            .as("%d x %d to %d x %d at %d, %d", size[0], size[1], size[2], size[3], x, y)
                            .isBetween(-0.5000001, 0.5000001);
                }
            }
        }
    }

    private static double mean(BufferedImage picture, int width, int height, int column, int row, int shift) {
        double wide = (double) picture.getWidth() / width;
        double tall = (double) picture.getHeight() / height;
        double sum = 0;
        for (int y = 0; y < picture.getHeight(); y++) {
            double high = Math.min(y + 1, (row + 1) * tall) - Math.max(y, row * tall);
            for (int x = 0; x < picture.getWidth() && high > 0; x++) {
                double broad = Math.min(x + 1, (column + 1) * wide) - Math.max(x, column * wide);
                sum += broad > 0 ? high * broad * (picture.getRGB(x, y) >> shift & 255) : 0;
            }
        }
        return sum / (wide * tall);
    }
}
