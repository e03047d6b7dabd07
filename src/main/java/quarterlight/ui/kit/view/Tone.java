package quarterlight.ui.kit.view;

import java.awt.image.BufferedImage;
import java.awt.image.WritableRaster;
import java.util.stream.IntStream;
import quarterlight.units.Worded;

/**
 * How the light and dark of a photo are shown, for reading a faint stamp; the photo itself stays as it is. What stands near the edge of
 * the picture has as much of a say as the rest of the part that is seen, so zooming in on the stamp alone shows it best. Pure functions.
 */
public enum Tone implements Worded {
    /** As the camera recorded it. */
    RECORDED("recorded"),
    /** What is seen, from its darkest to its lightest, over the whole range; a hundredth at either end is given up. */
    STRETCHED("stretched"),
    /** In gray, each place against what lies around it: shallow edges stand out, large light and shadow vanish. */
    EDGES("edges");

    private static final int LEVELS = 256;
    /** Share of the pixels given up at either end of the range. Judgment. */
    private static final double GIVEN_UP = 0.01;
    /** A place is laid against so much of the shorter side around it. Judgment, by the demo's stamps. */
    private static final int AROUND = 14;
    /** So many standard deviations of the surroundings fill half the range. Judgment. */
    private static final double SPREADS = 2.2;
    /** Least standard deviation, in levels: noise of an even surface is not made into a pattern. Judgment. */
    private static final double LEAST_SPREAD = 3;

    private final String word;

    Tone(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }

    public Tone next() {
        Tone[] all = values();
        return all[(ordinal() + 1) % all.length];
    }

    /**
     * The part of the photo that is seen, in this tone.
     *
     * @param seen RGB; not changed
     */
    BufferedImage of(BufferedImage seen) {
        if (this == RECORDED) {
            return seen;
        }
        int[] rgb = seen.getRGB(0, 0, seen.getWidth(), seen.getHeight(), null, 0, seen.getWidth());
        int[] gray = gray(rgb);
        int[] shown = this == STRETCHED ? stretched(rgb, gray) : edges(gray, seen.getWidth(), seen.getHeight());
        BufferedImage made = new BufferedImage(seen.getWidth(), seen.getHeight(), BufferedImage.TYPE_INT_RGB);
        WritableRaster raster = made.getRaster();
        raster.setDataElements(0, 0, seen.getWidth(), seen.getHeight(), shown);
        return made;
    }

    /** Luma by the weights of ITU-R BT.601. */
    private static int[] gray(int[] rgb) {
        return IntStream.of(rgb)
                .map(p -> (299 * (p >> 16 & 255) + 587 * (p >> 8 & 255) + 114 * (p & 255)) / 1000)
                .toArray();
    }

    private static int[] stretched(int[] rgb, int[] gray) {
        int[] count = new int[LEVELS];
        for (int level : gray) {
            count[level]++;
        }
        int low = level(count, GIVEN_UP * gray.length);
        int high = Math.max(low + 1, level(count, (1 - GIVEN_UP) * gray.length));
        int[] to = IntStream.range(0, LEVELS)
                .map(level -> clamped((level - low) * 255.0 / (high - low)))
                .toArray();
        return IntStream.of(rgb)
                .map(p -> to[p >> 16 & 255] << 16 | to[p >> 8 & 255] << 8 | to[p & 255])
                .toArray();
    }

    /** The level below which lie so many pixels. */
    private static int level(int[] count, double pixels) {
        double seen = 0;
        for (int level = 0; level < LEVELS; level++) {
            seen += count[level];
            if (seen > pixels) {
                return level;
            }
        }
        return LEVELS - 1;
    }

    private static int[] edges(int[] gray, int width, int height) {
        int reach = Math.max(6, Math.min(width, height) / AROUND);
        long[] sum = new long[(width + 1) * (height + 1)];
        long[] squares = new long[sum.length];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                int level = gray[y * width + x];
                int at = (y + 1) * (width + 1) + x + 1;
                sum[at] = sum[at - 1] + sum[at - width - 1] - sum[at - width - 2] + level;
                squares[at] =
                        squares[at - 1] + squares[at - width - 1] - squares[at - width - 2] + (long) level * level;
            }
        }
        int[] shown = new int[gray.length];
        for (int y = 0; y < height; y++) {
            int top = Math.max(0, y - reach) * (width + 1);
            int bottom = Math.min(height, y + reach + 1) * (width + 1);
            int rows = (bottom - top) / (width + 1);
            for (int x = 0; x < width; x++) {
                int left = Math.max(0, x - reach);
                int right = Math.min(width, x + reach + 1);
                double n = (double) rows * (right - left);
                double mean = (sum[bottom + right] - sum[bottom + left] - sum[top + right] + sum[top + left]) / n;
                double square =
                        (squares[bottom + right] - squares[bottom + left] - squares[top + right] + squares[top + left])
                                / n;
                double spread = Math.max(LEAST_SPREAD, Math.sqrt(Math.max(0, square - mean * mean)));
                int level = clamped(127.5 + 127.5 * (gray[y * width + x] - mean) / (SPREADS * spread));
                shown[y * width + x] = level << 16 | level << 8 | level;
            }
        }
        return shown;
    }

    private static int clamped(double level) {
        return (int) Math.round(Math.max(0, Math.min(255, level)));
    }
}
