package quarterlight.page.report.picture;

import java.awt.image.BufferedImage;
import java.util.List;

/**
 * A picture as a JPEG for print, without any data of the photo it was made from. A picture with much grain is written at a lower
 * quality, so that sixty of them stay within 15 MB.
 */
public final class PrintedPicture {
    /**
     * Long side in pixels: over 270 dots an inch at half the width of A4, and a reader can look closer on a screen. A photo of 12 million pixels, 4032
     * wide, is decoded at exactly a quarter, and need not be reduced again.
     */
    static final int LONG_SIDE_PX = 1008;

    private static final int MAX_BYTES = 220_000;
    private static final List<Integer> QUALITIES = List.of(82, 72, 60, 45, 30);
    /** Of the bytes at the first quality, about how many each takes of a grainy picture: estimates, not measured; they only spare attempts. */
    private static final List<Double> SHARES = List.of(1.0, 0.74, 0.57, 0.43, 0.30);

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
        byte[] jpeg = writing.jpeg(image, QUALITIES.get(0));
        double first = jpeg.length;
        for (int step = 1; step < QUALITIES.size() && jpeg.length > MAX_BYTES; step++) {
            boolean hopeless = step + 1 < QUALITIES.size() && first * SHARES.get(step) > MAX_BYTES;
            if (!hopeless) {
                jpeg = writing.jpeg(image, QUALITIES.get(step));
            }
        }
        return new PrintedPicture(jpeg, image.getWidth(), image.getHeight());
    }
}
