package quarterlight.page.report.picture;

import java.awt.image.BufferedImage;

/** Writes a picture as a JPEG in plain sRGB without a profile or any other data. Safe for several threads. */
@FunctionalInterface
public interface PictureWriting {
    /** @param quality 1 to 100, on the scale of the JPEG library */
    byte[] jpeg(BufferedImage picture, int quality);
}
