package quarterlight.photo;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import quarterlight.capture.DifferenceHash;
import quarterlight.capture.Exposure;
import quarterlight.capture.GreyPicture;
import quarterlight.capture.Sharpness;

/**
 * Numbers about a picture that help to weed: hash and exposure from any size down to a thumbnail, sharpness at its one fixed size.
 */
public final class PictureMeasures {
    private PictureMeasures() {}

    /** Sharpness of an upright picture; it is brought to {@link Sharpness#LONG_SIDE} first, a smaller one enlarged (and so scores low). */
    public static double sharpness(BufferedImage picture) {
        return Sharpness.of(grey(scaled(picture, Sharpness.LONG_SIDE)));
    }

    /** Of a thumbnail or larger picture. */
    public static DifferenceHash hash(BufferedImage picture) {
        return DifferenceHash.of(grey(picture));
    }

    /** Of a thumbnail or larger picture. */
    public static Exposure exposure(BufferedImage picture) {
        return Exposure.of(grey(picture));
    }

    private static GreyPicture grey(BufferedImage picture) {
        int width = picture.getWidth();
        int height = picture.getHeight();
        return GreyPicture.ofSrgb(
                width,
                height,
                picture.getType() == BufferedImage.TYPE_INT_RGB
                        ? RgbPixels.of(picture)
                        : picture.getRGB(0, 0, width, height, null, 0, width));
    }

    private static BufferedImage scaled(BufferedImage picture, int longSide) {
        int longest = Math.max(picture.getWidth(), picture.getHeight());
        if (longest >= longSide) {
            return Pictures.fitted(picture, longSide);
        }
        double scale = (double) longSide / longest;
        int width = Math.max(1, (int) Math.round(picture.getWidth() * scale));
        int height = Math.max(1, (int) Math.round(picture.getHeight() * scale));
        BufferedImage large = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = large.createGraphics();
        try {
            g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
            g.drawImage(picture, 0, 0, width, height, null);
        } finally {
            g.dispose();
        }
        return large;
    }
}
