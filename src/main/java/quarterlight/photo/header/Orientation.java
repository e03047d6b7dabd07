package quarterlight.photo.header;

import java.awt.image.BufferedImage;
import quarterlight.photo.pixels.RgbPixels;

/**
 * How stored pixels are turned to stand upright.
 * <p>Source: CIPA DC-008 (Exif), tag Orientation 0x0112: where row 0 and column 0 of the stored picture lie when it is shown.
 */
public enum Orientation {
    TOP_LEFT(false, false, false),
    TOP_RIGHT(false, true, false),
    BOTTOM_RIGHT(false, true, true),
    BOTTOM_LEFT(false, false, true),
    LEFT_TOP(true, false, false),
    RIGHT_TOP(true, true, false),
    RIGHT_BOTTOM(true, true, true),
    LEFT_BOTTOM(true, false, true);

    private final boolean swapped;
    private final boolean fromRight;
    private final boolean fromBottom;

    Orientation(boolean swapped, boolean fromRight, boolean fromBottom) {
        this.swapped = swapped;
        this.fromRight = fromRight;
        this.fromBottom = fromBottom;
    }

    /** By Exif's number 1 to 8; any other counts as 1. */
    public static Orientation of(int exif) {
        return exif >= 1 && exif <= 8 ? values()[exif - 1] : TOP_LEFT;
    }

    /** Whether width and height change places. */
    boolean swapsSides() {
        return swapped;
    }

    /**
     * By the matrix of a film's track, which sends a stored place (x, y) to (a x + c y, b x + d y), x to the right and y down.
     * <p>Source: ISO/IEC 14496-12 section 8.3.2.
     */
    public static Orientation ofMatrix(int a, int b, int c, int d) {
        if (Math.abs((long) a) + Math.abs((long) d) >= Math.abs((long) b) + Math.abs((long) c)) {
            return a >= 0 ? d >= 0 ? TOP_LEFT : BOTTOM_LEFT : d >= 0 ? TOP_RIGHT : BOTTOM_RIGHT;
        }
        return b >= 0 ? c >= 0 ? LEFT_TOP : RIGHT_TOP : c >= 0 ? LEFT_BOTTOM : RIGHT_BOTTOM;
    }

    /**
     * As a HEIF container says: quarter turns counterclockwise, then a mirroring.
     *
     * @param mirror 0 about a vertical axis (left and right change sides), 1 about a horizontal one; otherwise none
     */
    static Orientation ofHeif(int quarterTurns, int mirror) {
        Orientation turned =
                switch (quarterTurns & 3) {
                    case 1 -> LEFT_BOTTOM;
                    case 2 -> BOTTOM_RIGHT;
                    case 3 -> RIGHT_TOP;
                    default -> TOP_LEFT;
                };
        return mirror == 0
                ? with(turned.swapped, !turned.fromRight, turned.fromBottom)
                : mirror == 1 ? with(turned.swapped, turned.fromRight, !turned.fromBottom) : turned;
    }

    private static Orientation with(boolean swapped, boolean fromRight, boolean fromBottom) {
        for (Orientation each : values()) {
            if (each.swapped == swapped && each.fromRight == fromRight && each.fromBottom == fromBottom) {
                return each;
            }
        }
        throw new IllegalStateException("the eight cover all");
    }

    /** The picture upright; {@code image} is of type INT_RGB and is not changed. */
    public BufferedImage turned(BufferedImage image) {
        if (this == TOP_LEFT) {
            return image;
        }
        int width = image.getWidth();
        int height = image.getHeight();
        int across = swapped ? height : width;
        int down = swapped ? width : height;
        BufferedImage upright = new BufferedImage(across, down, BufferedImage.TYPE_INT_RGB);
        int[] stored = RgbPixels.of(image);
        int[] shown = RgbPixels.of(upright);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                int right = swapped ? y : x;
                int below = swapped ? x : y;
                int column = fromRight ? across - 1 - right : right;
                int row = fromBottom ? down - 1 - below : below;
                shown[row * across + column] = stored[y * width + x];
            }
        }
        return upright;
    }
}
