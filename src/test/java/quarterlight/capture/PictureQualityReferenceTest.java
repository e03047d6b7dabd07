package quarterlight.capture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.IntBinaryOperator;
import org.junit.jupiter.api.Test;

/**
 * Computed outside this program (NumPy): variance of the Laplacian with border rule reflect-101, population variance; difference
 * hashes of constructed grids; the distance of two published hash values (README of the imha package).
 */
class PictureQualityReferenceTest {
    @Test
    void sharpnessOfFivePicturesMirroredAtTheBorder() {
        assertThat(Sharpness.of(picture(6, 6, (x, y) -> 77))).isZero();
        assertThat(Sharpness.of(picture(6, 6, (x, y) -> 10 * x))).isCloseTo(133.333, within(0.001));
        assertThat(Sharpness.of(picture(6, 6, (x, y) -> x < 3 ? 0 : 100))).isCloseTo(3333.333, within(0.001));
        assertThat(Sharpness.of(picture(5, 5, (x, y) -> x == 2 && y == 2 ? 100 : 0)))
                .isCloseTo(8000, within(0.001));
        assertThat(Sharpness.of(picture(8, 8, (x, y) -> (x + y) % 2 * 255))).isCloseTo(1_040_400, within(0.001));
    }

    /** By reckoning: every response of a checkerboard is +1020 or -1020, as many of the one as of the other. */
    @Test
    void sharpnessOfAWidePictureDoesNotOverflow() {
        assertThat(Sharpness.of(picture(3000, 2, (x, y) -> (x + y) % 2 * 255))).isEqualTo(1020.0 * 1020.0);
    }

    /** By the definition: 0.299 R + 0.587 G + 0.114 B (ITU-R BT.601), rounded half up, for each of the 16,777,216 colors. */
    @Test
    void lumaOfEveryColorIsTheRoundedWeightedSum() {
        int[] colors = new int[1 << 16];
        for (int red = 0; red < 256; red++) {
            for (int rest = 0; rest < colors.length; rest++) {
                colors[rest] = red << 16 | rest;
            }
            int[] expected = new int[colors.length];
            for (int rest = 0; rest < colors.length; rest++) {
                expected[rest] = (299 * red + 587 * (rest >> 8) + 114 * (rest & 255) + 500) / 1000;
            }
            assertThat(GreyPicture.lumaOfSrgb(colors)).as("red %d", red).isEqualTo(expected);
        }
    }

    @Test
    void sharpnessOfALineOfPixelsIsDefined() {
        assertThat(Sharpness.of(picture(1, 1, (x, y) -> 9))).isZero();
        assertThat(Sharpness.of(picture(1, 9, (x, y) -> 10 * y))).isPositive();
    }

    @Test
    void differenceHashesOfConstructedGrids() {
        assertThat(DifferenceHash.of(picture(9, 8, (x, y) -> 10 * x)).bits()).isEqualTo(0xffffffffffffffffL);
        assertThat(DifferenceHash.of(picture(9, 8, (x, y) -> 200 - 10 * x)).bits())
                .isZero();
        assertThat(DifferenceHash.of(picture(9, 8, (x, y) -> x % 2)).bits()).isEqualTo(0xaaaaaaaaaaaaaaaaL);
        assertThat(DifferenceHash.of(picture(90, 56, (x, y) -> x / 10 % 2)).bits())
                .isEqualTo(0xaaaaaaaaaaaaaaaaL);
    }

    @Test
    void distanceOfTwoPublishedHashes() {
        DifferenceHash one = new DifferenceHash(0xffd7918181c9ffffL);
        DifferenceHash other = new DifferenceHash(0x9f172786e71f1e00L);
        assertThat(one.distance(other)).isEqualTo(33);
        assertThat(one.distance(one)).isZero();
    }

    @Test
    void aCellThatCutsAPixelTakesItsShare() {
        // three pixels 0, 60, 120 in two cells: (0 + 30) / 1.5 and (30 + 120) / 1.5
        assertThat(picture(3, 1, (x, y) -> 60 * x).means(2, 1)).containsExactly(new double[] {20, 100}, within(1e-9));
    }

    @Test
    void exposureGivesItsNumbers() {
        Exposure dark = Exposure.of(picture(10, 10, (x, y) -> x < 6 ? 0 : 128));
        assertThat(dark.hint()).isEqualTo(Exposure.Hint.DARK);
        assertThat(dark.shareBlack()).isCloseTo(0.6, within(1e-12));
        assertThat(dark.mean()).isCloseTo(51.2, within(1e-12));
        assertThat(Exposure.of(picture(10, 10, (x, y) -> x < 4 ? 255 : 128)).hint())
                .isEqualTo(Exposure.Hint.BRIGHT);
        assertThat(Exposure.of(picture(10, 10, (x, y) -> 20 * x)).hint()).isEqualTo(Exposure.Hint.NONE);
    }

    static GreyPicture picture(int width, int height, IntBinaryOperator value) {
        int[] values = new int[width * height];
        for (int i = 0; i < values.length; i++) {
            values[i] = value.applyAsInt(i % width, i / width);
        }
        return new GreyPicture(width, height, values);
    }

    /** Each limit of the hint from both sides. */
    @Test
    void theHintOfExposureTurnsAtItsLimits() {
        assertThat(hint((x, y) -> 40)).isEqualTo(Exposure.Hint.DARK);
        assertThat(hint((x, y) -> 41)).isEqualTo(Exposure.Hint.NONE);
        assertThat(hint((x, y) -> 215)).isEqualTo(Exposure.Hint.BRIGHT);
        assertThat(hint((x, y) -> 214)).isEqualTo(Exposure.Hint.NONE);
        assertThat(hint((x, y) -> 10 * y + x < 50 ? 10 : 150)).isEqualTo(Exposure.Hint.DARK);
        assertThat(hint((x, y) -> 10 * y + x < 49 ? 10 : 150)).isEqualTo(Exposure.Hint.NONE);
        assertThat(hint((x, y) -> 10 * y + x < 50 ? 11 : 150)).isEqualTo(Exposure.Hint.NONE);
        assertThat(hint((x, y) -> 10 * y + x < 35 ? 245 : 100)).isEqualTo(Exposure.Hint.BRIGHT);
        assertThat(hint((x, y) -> 10 * y + x < 34 ? 245 : 100)).isEqualTo(Exposure.Hint.NONE);
        assertThat(hint((x, y) -> 10 * y + x < 35 ? 244 : 100)).isEqualTo(Exposure.Hint.NONE);
    }

    private static Exposure.Hint hint(java.util.function.IntBinaryOperator grey) {
        return Exposure.of(picture(10, 10, grey)).hint();
    }
}
