package quarterlight.rust.color;

import java.util.BitSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PixelPoint;

/**
 * How much of an outlined region looks like rust by its color; a suggestion to confirm. Immutable but for its mask, which
 * is a copy at every call.
 */
public final class ColorShare {
    private final BitSet rusty;
    private final int pixels;

    private ColorShare(BitSet rusty, int pixels) {
        this.rusty = rusty;
        this.pixels = pixels;
    }

    /**
     * Looks at every pixel whose middle lies within the outline.
     *
     * @param srgb the picture, row-major, {@code width} x {@code height}, 0xRRGGBB
     * @param outline in pixels of that same picture
     * @param left pixels to leave out (index y * width + x), for what the inspector brushed away
     * @param threshold least likeness that counts, above 0 to 1
     */
    public static ColorShare of(
            int[] srgb, int width, int height, Outline outline, BitSet left, RustColor rule, double threshold) {
        if (width < 1 || height < 1 || srgb.length != (long) width * height) {
            throw new IllegalArgumentException("a picture of " + width + " by " + height + " has not " + srgb.length);
        }
        if (!(threshold > 0 && threshold <= 1)) {
            throw new IllegalArgumentException("a threshold lies above 0 and up to 1, not at " + threshold);
        }
        BitSet within = within(outline, width, height);
        within.andNot(left);
        BitSet rusty = new BitSet(srgb.length);
        for (int i = within.nextSetBit(0); i >= 0; i = within.nextSetBit(i + 1)) {
            if (rule.likeness(srgb[i]) >= threshold) {
                rusty.set(i);
            }
        }
        return new ColorShare(rusty, within.cardinality());
    }

    /** The share that looks like rust, 0 to 1; empty if the region holds no pixel. */
    public OptionalDouble share() {
        return pixels == 0 ? OptionalDouble.empty() : OptionalDouble.of((double) rusty.cardinality() / pixels);
    }

    /** How many pixels were looked at. */
    public int pixels() {
        return pixels;
    }

    /** The pixels that look like rust (index y * width + x), to be laid over the photo. */
    public BitSet mask() {
        return (BitSet) rusty.clone();
    }

    /** Pixels whose middle lies within the rings by the even-odd rule. */
    private static BitSet within(Outline outline, int width, int height) {
        BitSet within = new BitSet(width * height);
        for (int y = 0; y < height; y++) {
            double[] crossings = crossings(outline, y + 0.5);
            for (int i = 0; i + 1 < crossings.length; i += 2) {
                int from = Math.max(0, (int) Math.ceil(crossings[i] - 0.5));
                int to = Math.min(width, (int) Math.ceil(crossings[i + 1] - 0.5));
                if (from < to) {
                    within.set(y * width + from, y * width + to);
                }
            }
        }
        return within;
    }

    /** Where a row meets the rings, from left to right. */
    private static double[] crossings(Outline outline, double y) {
        DoubleStream all = crossings(outline.shell(), y);
        for (List<PixelPoint> hole : outline.holes()) {
            all = DoubleStream.concat(all, crossings(hole, y));
        }
        return all.sorted().toArray();
    }

    private static DoubleStream crossings(List<PixelPoint> ring, double y) {
        DoubleStream.Builder found = DoubleStream.builder();
        for (int i = 0; i < ring.size(); i++) {
            PixelPoint p = ring.get(i);
            PixelPoint q = ring.get((i + 1) % ring.size());
            if (p.y() <= y != q.y() <= y) {
                found.add(p.x() + (y - p.y()) / (q.y() - p.y()) * (q.x() - p.x()));
            }
        }
        return found.build();
    }
}
