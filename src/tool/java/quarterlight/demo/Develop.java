package quarterlight.demo;

import java.awt.image.BufferedImage;
import java.util.SplittableRandom;

/** From linear light to a photo: exposure, fall-off to the corners, softness of the lens, grain, sRGB. */
final class Develop {
    private Develop() {}

    /**
     * @param soft blur of the lens, px
     * @param shake blur along x by a moving hand, px; 0 for none
     * @param warmth above 0 warmer
     */
    static BufferedImage print(
            float[][] light, int w, int h, double exposure, double soft, double shake, double warmth, long seed) {
        for (float[] part : light) {
            if (soft > 0.3) {
                Blur.box3(part, w, h, soft);
            }
            if (shake > 0.5) {
                Blur.along(part, w, h, shake);
            }
        }
        float[] grain = grain(w, h, seed);
        BufferedImage image = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
        int[] row = new int[w];
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                int i = y * w + x;
                double dx = (x - w * 0.5) / w;
                double dy = (y - h * 0.5) / w;
                double fall = 1.5 * exposure * (1 - 0.55 * (dx * dx + dy * dy));
                double noise = grain[i];
                int r = encode(light[0][i] * fall * (1 + 0.10 * warmth), noise);
                int g = encode(light[1][i] * fall, noise);
                int b = encode(light[2][i] * fall * (1 - 0.12 * warmth), noise);
                row[x] = r << 16 | g << 8 | b;
            }
            image.setRGB(0, y, w, 1, row, 0, w);
        }
        return image;
    }

    private static float[] grain(int w, int h, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        float[] grain = new float[w * h];
        for (int i = 0; i < grain.length; i++) {
            grain[i] = (float) (random.nextDouble() + random.nextDouble() + random.nextDouble() - 1.5);
        }
        Blur.box3(grain, w, h, 0.9);
        return grain;
    }

    /** A soft shoulder above mid grey keeps bright skies from clipping. */
    private static int encode(double linear, double grain) {
        double x = Math.max(0, linear);
        double toned = Math.min(1, x * (1 + x / 7) / (1 + x * 0.62));
        double flat = toned <= 0.0031308 ? 12.92 * toned : 1.055 * Math.pow(toned, 1 / 2.4) - 0.055;
        double s = flat + 0.13 * (flat * flat * (3 - 2 * flat) - flat);
        double v = s * 255 + grain * 7.5 * (1.15 - 0.6 * Math.min(1, s));
        return (int) Math.max(0, Math.min(255, Math.round(v)));
    }
}
