package quarterlight.photo.pixels;

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
        int width = picture.getWidth();
        int height = picture.getHeight();
        double scale = (double) Sharpness.LONG_SIDE / Math.max(width, height);
        int shownWidth = Math.max(1, (int) Math.round(width * scale));
        int shownHeight = Math.max(1, (int) Math.round(height * scale));
        if (scale > 1) {
            return Sharpness.of(grey(enlarged(picture, shownWidth, shownHeight)));
        }
        int[] grey = GreyPicture.lumaOfSrgb(srgb(picture));
        return Sharpness.of(new GreyPicture(
                shownWidth, shownHeight, RgbPixels.reduced(grey, width, height, shownWidth, shownHeight)));
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
        return GreyPicture.ofSrgb(picture.getWidth(), picture.getHeight(), srgb(picture));
    }

    private static int[] srgb(BufferedImage picture) {
        int width = picture.getWidth();
        return picture.getType() == BufferedImage.TYPE_INT_RGB
                ? RgbPixels.of(picture)
                : picture.getRGB(0, 0, width, picture.getHeight(), null, 0, width);
    }

    private static BufferedImage enlarged(BufferedImage picture, int width, int height) {
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
