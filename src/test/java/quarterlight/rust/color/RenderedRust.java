package quarterlight.rust.color;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.BitSet;
import java.util.Random;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;

/**
 * A drawn picture of rust on paint with its true mask: blotches and specks of iron oxides from dark to yellow on one of eleven finishes, with
 * stains that run down from them, dust, shading, a glare, light of another color, noise, and the losses of a JPEG file.
 */
final class RenderedRust {
    static final int WIDTH = 320;
    static final int HEIGHT = 240;

    private static final int[] FINISHES = {
        0x2A4D8F, 0xE8E6DF, 0x8A8C8E, 0x1E1E20, 0x2F4A36, 0xD9CDA8, 0x5E1F24, 0xB59F7C, 0xB4B8BC, 0xB3261E, 0x6F6E72
    };
    private static final int[] OXIDES = {0x3E2518, 0x5C3019, 0x7A3F1D, 0x8B4513, 0xA35A2A, 0xB7713A, 0xC98F52};
    private static final int STAIN = 0x9A6A3C;
    private static final int DUST = 0x9C8A70;

    private final int[] srgb;
    private final BitSet truth;

    private RenderedRust(int[] srgb, BitSet truth) {
        this.srgb = srgb;
        this.truth = truth;
    }

    /** Row-major, {@link #WIDTH} x {@link #HEIGHT}; not to be changed. */
    int[] srgb() {
        return srgb;
    }

    /** The pixels of rust; not to be changed. */
    BitSet truth() {
        return truth;
    }

    static RenderedRust of(long seed) {
        Random random = new Random(seed);
        double[] where = noise(random, 28, 4);
        double[] tone = noise(random, 14, 3);
        double[] dust = noise(random, 60, 2);
        double[] sorted = where.clone();
        java.util.Arrays.sort(sorted);
        double share = .03 + .5 * random.nextDouble();
        double edge = sorted[(int) ((1 - share) * (sorted.length - 1))];
        int finish = FINISHES[random.nextInt(FINISHES.length)];
        double dusty = random.nextDouble() < .4 ? .5 : 0;
        double stained = random.nextDouble() * .5;
        double warm = .92 + .3 * random.nextDouble();
        double cool = .72 + .38 * random.nextDouble();
        double glare = random.nextDouble() < .5 ? .7 * random.nextDouble() : 0;
        double glareX = random.nextDouble() * WIDTH;
        double glareY = random.nextDouble() * HEIGHT;
        double noisy = 3 + 6 * random.nextDouble();
        double dark = .45 + .4 * random.nextDouble();
        BitSet truth = new BitSet();
        double[] run = new double[WIDTH];
        int[] srgb = new int[WIDTH * HEIGHT];
        for (int i = 0; i < srgb.length; i++) {
            int x = i % WIDTH;
            int y = Math.floorDiv(i, WIDTH);
            double cover = Math.max(0, Math.min(1, .5 + (where[i] - edge) * 18));
            if (cover > .5) {
                truth.set(i);
            }
            run[x] = Math.max(cover, run[x] * .95);
            double place = Math.max(0, Math.min(.999, .5 + 1.6 * (tone[i] - .5))) * (OXIDES.length - 1);
            double light = dark + (1.15 - dark) * x / WIDTH;
            double shine = glare * Math.exp(-(sq(x - glareX) + sq(y - glareY)) / (2 * sq(45)));
            int out = 0;
            for (int shift = 16; shift >= 0; shift -= 8) {
                double paint = channel(finish, shift);
                paint += (channel(STAIN, shift) - paint) * stained * run[x];
                paint += (channel(DUST, shift) - paint) * (dust[i] > .6 ? dusty : 0);
                double oxide = channel(OXIDES[(int) place], shift) * (1 - place % 1)
                        + channel(OXIDES[(int) place + 1], shift) * (place % 1);
                double value = (paint + (oxide - paint) * cover) * light;
                value *= shift == 16 ? warm : shift == 0 ? cool : 1;
                value += (255 - value) * shine + noisy * random.nextGaussian();
                out |= (int) Math.max(0, Math.min(255, value)) << shift;
            }
            srgb[i] = out;
        }
        return new RenderedRust(asJpeg(srgb), truth);
    }

    private static double sq(double x) {
        return x * x;
    }

    private static int channel(int rgb, int shift) {
        return rgb >> shift & 0xFF;
    }

    /** Value noise in octaves, about 0 to 1. */
    private static double[] noise(Random random, double size, int octaves) {
        double[] sum = new double[WIDTH * HEIGHT];
        double weight = 1;
        double all = 0;
        for (int octave = 0; octave < octaves; octave++) {
            int columns = (int) (WIDTH / size) + 3;
            double[] grid =
                    random.doubles((long) columns * ((int) (HEIGHT / size) + 3)).toArray();
            for (int i = 0; i < sum.length; i++) {
                double gx = i % WIDTH / size;
                double gy = Math.floorDiv(i, WIDTH) / size;
                int at = (int) Math.floor(gy) * columns + (int) Math.floor(gx);
                double fx = smooth(gx % 1);
                double fy = smooth(gy % 1);
                double above = grid[at] + (grid[at + 1] - grid[at]) * fx;
                double below = grid[at + columns] + (grid[at + columns + 1] - grid[at + columns]) * fx;
                sum[i] += weight * (above + (below - above) * fy);
            }
            all += weight;
            weight *= .55;
            size /= 2.1;
        }
        for (int i = 0; i < sum.length; i++) {
            sum[i] /= all;
        }
        return sum;
    }

    private static double smooth(double t) {
        return t * t * (3 - 2 * t);
    }

    private static int[] asJpeg(int[] srgb) {
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        image.setRGB(0, 0, WIDTH, HEIGHT, srgb, 0, WIDTH);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        try {
            ImageWriteParam quality = writer.getDefaultWriteParam();
            quality.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            quality.setCompressionQuality(.8f);
            writer.setOutput(ImageIO.createImageOutputStream(bytes));
            writer.write(null, new IIOImage(image, null, null), quality);
            return ImageIO.read(new ByteArrayInputStream(bytes.toByteArray()))
                    .getRGB(0, 0, WIDTH, HEIGHT, null, 0, WIDTH);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            writer.dispose();
        }
    }

    /** Overlap of a mask with the truth: intersection over union. */
    double overlap(BitSet mask) {
        BitSet both = (BitSet) mask.clone();
        both.and(truth);
        BitSet either = (BitSet) mask.clone();
        either.or(truth);
        return either.isEmpty() ? 1 : (double) both.cardinality() / either.cardinality();
    }

    /** Share of the picture by a mask less the true share. */
    double shareOff(BitSet mask) {
        return (double) (mask.cardinality() - truth.cardinality()) / srgb.length;
    }
}
