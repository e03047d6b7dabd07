package quarterlight.rust.color;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PixelPoint;

class ColorShareTest {
    private static final int WIDTH = 400;
    private static final int HEIGHT = 300;

    /** Published CIELAB values of the sRGB primaries, white D65 (B. Lindbloom's color pages, from memory). */
    @ParameterizedTest(name = "{0} is L {1}, a {2}, b {3}")
    @CsvSource({
        "ff0000,53.24,80.09,67.20",
        "00ff00,87.73,-86.18,83.18",
        "0000ff,32.30,79.19,-107.86",
        "ffffff,100,0,0",
        "000000,0,0,0"
    })
    void labHasThePublishedValues(String rgb, double l, double a, double b) {
        double[] lab = RustColor.lab(Integer.parseInt(rgb, 16));
        assertThat(lab[0]).isCloseTo(l, within(0.01));
        assertThat(lab[1]).isCloseTo(a, within(0.02));
        assertThat(lab[2]).isCloseTo(b, within(0.02));
    }

    private static boolean looksLikeRust(String rgb) {
        return RustColor.V1.likeness(Integer.parseInt(rgb, 16)) >= RustColor.USUAL_THRESHOLD;
    }

    @ParameterizedTest(name = "rust {0}")
    @ValueSource(strings = {"b7410e", "8b4513", "c66b3d", "5a2d1a", "a9713b"})
    void rustLooksLikeRust(String rgb) {
        assertThat(looksLikeRust(rgb)).isTrue();
    }

    @ParameterizedTest(name = "not rust {0}")
    @ValueSource(
            strings = {
                "2a4d8f", "808080", "9a9a98", "f5f5dc", "ffffff", "101010", "ffa500", "ff6a00", "c00000", "2f6b3a"
            })
    void clearlyOtherColorsDoNot(String rgb) {
        assertThat(looksLikeRust(rgb)).isFalse();
    }

    /** Known traps: color cannot tell these from rust, at the usual threshold or one a little lower, and {@link RustColor#traps} says so. */
    @ParameterizedTest(name = "{1} {0} is much like rust")
    @CsvSource({"964b00,leather", "7a3b2e,red-oxide primer", "5c3317,brown paint", "c68863,skin", "7a6650,dirt"})
    void trapsAreTakenForRustAndNamed(String rgb, String what) {
        assertThat(RustColor.V1.likeness(Integer.parseInt(rgb, 16))).isGreaterThan(0.6);
        assertThat(String.join(" ", RustColor.traps())).contains(what);
    }

    @Test
    void aHigherThresholdNeverTakesMore() {
        int[] colors = new Random(5).ints(2000, 0, 0x1000000).toArray();
        for (int color : colors) {
            assertThat(RustColor.V1.likeness(color)).isBetween(0.0, 1.0);
        }
        Outline all = rectangle(0, 0, 50, 40);
        double last = 1;
        for (double threshold : new double[] {0.1, 0.3, 0.5, 0.7, 0.9}) {
            double share = ColorShare.of(colors, 50, 40, all, new BitSet(), RustColor.V1, threshold)
                    .share()
                    .orElseThrow();
            assertThat(share).isLessThanOrEqualTo(last);
            last = share;
        }
    }

    private static Outline rectangle(double x0, double y0, double x1, double y1) {
        return new Outline(
                List.of(new PixelPoint(x0, y0), new PixelPoint(x1, y0), new PixelPoint(x1, y1), new PixelPoint(x0, y1)),
                List.of());
    }

    /** Blotches of rust on blue paint, with shading and noise; returns the picture and sets the truth. */
    private static int[] rendered(long seed, double wanted, BitSet truth) {
        Random random = new Random(seed);
        while (truth.cardinality() < wanted * WIDTH * HEIGHT) {
            double cx = random.nextDouble() * WIDTH;
            double cy = random.nextDouble() * HEIGHT;
            double r = 4 + 16 * random.nextDouble();
            for (int y = Math.max(0, (int) (cy - r)); y < Math.min(HEIGHT, cy + r); y++) {
                for (int x = Math.max(0, (int) (cx - r)); x < Math.min(WIDTH, cx + r); x++) {
                    if (Math.hypot(x + 0.5 - cx, y + 0.5 - cy) <= r) {
                        truth.set(y * WIDTH + x);
                    }
                }
            }
        }
        int[] rust = {0xB7410E, 0x8B4513, 0x9C5221, 0x6E3A1C};
        int[] srgb = new int[WIDTH * HEIGHT];
        for (int i = 0; i < srgb.length; i++) {
            int base = truth.get(i) ? rust[(i / 7 + i / WIDTH / 5) % rust.length] : 0x2A4D8F;
            double light = 0.75 + 0.35 * (i % WIDTH) / WIDTH;
            srgb[i] = shaded(base, light, random);
        }
        return srgb;
    }

    private static int shaded(int rgb, double light, Random random) {
        int out = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
            double value = light * (rgb >> shift & 0xFF) + 6 * random.nextGaussian();
            out |= (int) Math.max(0, Math.min(255, value)) << shift;
        }
        return out;
    }

    @ParameterizedTest(name = "share {0}")
    @ValueSource(doubles = {0.02, 0.1, 0.3, 0.6, 0.9})
    void theShareOfARenderedPictureIsWithin5Points(double wanted) {
        BitSet truth = new BitSet();
        int[] srgb = rendered(41, wanted, truth);
        ColorShare found = ColorShare.of(
                srgb,
                WIDTH,
                HEIGHT,
                rectangle(0, 0, WIDTH, HEIGHT),
                new BitSet(),
                RustColor.V1,
                RustColor.USUAL_THRESHOLD);
        double known = (double) truth.cardinality() / srgb.length;
        assertThat(found.share().orElseThrow()).isCloseTo(known, within(0.05));
        BitSet wrong = found.mask();
        wrong.xor(truth);
        assertThat((double) wrong.cardinality() / srgb.length)
                .as("pixels wrong either way")
                .isLessThan(0.05);
    }

    @Test
    void whatIsBrushedAwayTakesNoPart() {
        int[] srgb = new int[100];
        Arrays.fill(srgb, 0x8B4513);
        BitSet left = new BitSet();
        left.set(0, 40);
        ColorShare share =
                ColorShare.of(srgb, 10, 10, rectangle(0, 0, 10, 10), left, RustColor.V1, RustColor.USUAL_THRESHOLD);
        assertThat(share.pixels()).isEqualTo(60);
        assertThat(share.share()).hasValue(1);
        assertThat(ColorShare.of(srgb, 10, 10, rectangle(20, 20, 30, 30), left, RustColor.V1, 0.5)
                        .share())
                .isEmpty();
    }

    @Test
    void anInnerRingTakesNoPart() {
        Outline ring = new Outline(
                rectangle(0, 0, 10, 10).shell(), List.of(rectangle(2, 2, 8, 8).shell()));
        ColorShare share =
                ColorShare.of(new int[100], 10, 10, ring, new BitSet(), RustColor.V1, RustColor.USUAL_THRESHOLD);
        assertThat(share.pixels()).isEqualTo(100 - 36);
        assertThat(share.share()).hasValue(0);
    }

    /** Slanted and horizontal edges, a bay, a hole, parts beyond the picture: the geometry library says which middles lie within. */
    @Test
    void thePixelsAreThoseWhoseMiddleTheGeometryLibraryFindsWithin() {
        double[][] shell = {
            {-3.2, 4.1}, {11.7, -2.9}, {33.3, 6.4}, {21.9, 12.2}, {44.6, 27.8}, {12.3, 27.8}, {3.4, 19.1}
        };
        double[][] hole = {{9.1, 8.3}, {16.8, 9.9}, {12.2, 21.7}};
        Outline outline = new Outline(points(shell), List.of(points(hole)));
        GeometryFactory geometry = new GeometryFactory();
        Polygon polygon = geometry.createPolygon(ring(geometry, shell), new LinearRing[] {ring(geometry, hole)});
        BitSet expected = new BitSet();
        for (int y = 0; y < 30; y++) {
            for (int x = 0; x < 40; x++) {
                if (polygon.contains(geometry.createPoint(new Coordinate(x + 0.5, y + 0.5)))) {
                    expected.set(y * 40 + x);
                }
            }
        }
        int[] rust = new int[40 * 30];
        Arrays.fill(rust, 0x8B4513);
        ColorShare share = ColorShare.of(rust, 40, 30, outline, new BitSet(), RustColor.V1, RustColor.USUAL_THRESHOLD);
        assertThat(expected.cardinality()).isBetween(650, 750);
        assertThat(share.mask()).isEqualTo(expected);
        assertThat(share.pixels()).isEqualTo(expected.cardinality());
    }

    private static List<PixelPoint> points(double[]... xy) {
        return Arrays.stream(xy).map(p -> new PixelPoint(p[0], p[1])).toList();
    }

    private static LinearRing ring(GeometryFactory geometry, double[]... xy) {
        Coordinate[] closed = new Coordinate[xy.length + 1];
        for (int i = 0; i < closed.length; i++) {
            closed[i] = new Coordinate(xy[i % xy.length][0], xy[i % xy.length][1]);
        }
        return geometry.createLinearRing(closed);
    }

    /** An edge through the middles of pixels: those on the left and top edge count, those on the right and bottom edge do not. */
    @Test
    void aMiddleOnTheEdgeCountsOnOneSideOnly() {
        ColorShare share =
                ColorShare.of(new int[100], 10, 10, rectangle(2.5, 3.5, 6.5, 5.5), new BitSet(), RustColor.V1, 0.5);
        assertThat(share.pixels()).isEqualTo(4 * 2);
    }

    @Test
    void aPixelAsLikelyAsTheThresholdCounts() {
        int color = 0x7A6650;
        double likeness = RustColor.V1.likeness(color);
        assertThat(likeness).isBetween(0.05, 0.95);
        assertThat(shareOfOne(color, likeness)).isEqualTo(1);
        assertThat(shareOfOne(color, Math.nextUp(likeness))).isZero();
    }

    private static double shareOfOne(int color, double threshold) {
        return ColorShare.of(new int[] {color}, 1, 1, rectangle(0, 0, 1, 1), new BitSet(), RustColor.V1, threshold)
                .share()
                .orElseThrow();
    }

    @Test
    void aThresholdLiesAboveZeroAndUpToOne() {
        assertThat(shareOfOne(0, 1)).isZero();
        assertThat(shareOfOne(0, Double.MIN_VALUE)).isBetween(0.0, 1.0);
        assertThatIllegalArgumentException().isThrownBy(() -> shareOfOne(0, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> shareOfOne(0, Math.nextUp(1.0)));
    }

    @ParameterizedTest(name = "{0} by {1}")
    @CsvSource({"0,1", "1,0", "2,1", "1,2"})
    void aPictureHasAsManyPixelsAsItsSizeSays(int width, int height) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ColorShare.of(
                        new int[width * height == 0 ? 0 : 1],
                        width,
                        height,
                        rectangle(0, 0, 1, 1),
                        new BitSet(),
                        RustColor.V1,
                        0.5));
    }
}
