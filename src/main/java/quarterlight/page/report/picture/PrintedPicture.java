package quarterlight.page.report.picture;

import java.awt.image.BufferedImage;
import java.util.List;

/**
 * A picture as a JPEG for print, without any data of the photo it was made from. A picture with much grain is written at a lower
 * quality, so that sixty of them stay within 15 MB.
 */
public final class PrintedPicture {
    /** Long side in pixels: over 400 dots an inch on a width of 56 mm, so that a reader can look closer on a screen. */
    static final int LONG_SIDE_PX = 960;

    private static final int MAX_BYTES = 220_000;
    private static final List<Integer> QUALITIES = List.of(82, 72, 60, 45, 30);

    private final byte[] jpeg;
    private final int width;
    private final int height;

    private PrintedPicture(byte[] jpeg, int width, int height) {
        this.jpeg = jpeg;
        this.width = width;
        this.height = height;
    }

    /** The file; not to be changed. */
    public byte[] jpeg() {
        return jpeg;
    }

    public int width() {
        return width;
    }

    public int height() {
        return height;
    }

    /** @param image of type INT_RGB */
    static PrintedPicture of(BufferedImage image, PictureWriting writing) {
        byte[] jpeg = new byte[0];
        for (int quality : QUALITIES) {
            jpeg = writing.jpeg(image, quality);
            if (jpeg.length <= MAX_BYTES) {
                break;
            }
        }
        return new PrintedPicture(jpeg, image.getWidth(), image.getHeight());
    }
}
