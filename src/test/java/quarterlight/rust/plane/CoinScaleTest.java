package quarterlight.rust.plane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.visit.annotation.PixelPoint;

/** Points on an ellipse that is known give it back; marks beside the rim, or on one half of it, are none of a coin. */
class CoinScaleTest {
    private static final double MM = 24.26;
    private static final PixelPoint MIDDLE = new PixelPoint(1500, 900);
    private static final double[] UNEVEN = {0, 20, 50, 90, 140, 200, 260, 310};

    /** Points on an ellipse by its half axes and the direction of the long one. */
    private static List<PixelPoint> rim(double major, double minor, double directionDegrees, double... degrees) {
        double turn = Math.toRadians(directionDegrees);
        return Arrays.stream(degrees)
                .map(Math::toRadians)
                .mapToObj(a -> new PixelPoint(
                        MIDDLE.x() + major * Math.cos(a) * Math.cos(turn) - minor * Math.sin(a) * Math.sin(turn),
                        MIDDLE.y() + major * Math.cos(a) * Math.sin(turn) + minor * Math.sin(a) * Math.cos(turn)))
                .toList();
    }

    @ParameterizedTest
    @CsvSource({"120, 70, 25", "120, 70, 115", "300, 40, 160", "50, 49, 80", "200, 100, 0.5"})
    void marksThatStandUnevenlyRoundTheRimGiveTheEllipseBack(double major, double minor, double direction) {
        CoinScale found =
                CoinScale.ofRim(rim(major, minor, direction, UNEVEN), MM).orElseThrow();
        assertThat(found.majorPx()).isCloseTo(major, within(1e-6));
        assertThat(found.minorPx()).isCloseTo(minor, within(1e-6));
        assertThat(found.middle().x()).isCloseTo(MIDDLE.x(), within(1e-6));
        assertThat(found.middle().y()).isCloseTo(MIDDLE.y(), within(1e-6));
        double off = Math.toDegrees(found.majorRadians()) - direction;
        assertThat(Math.sin(Math.toRadians(off)))
                .as("direction, but for a half turn")
                .isCloseTo(0, within(1e-6));
        assertThat(found.mm2PerPixel()).isCloseTo(MM * MM / (4 * major * minor), within(1e-9));
        for (PixelPoint mark : rim(major, minor, direction, 10, 75, 190)) {
            PixelPoint mm = found.toMm(mark);
            assertThat(Math.hypot(mm.x(), mm.y())).isCloseTo(MM / 2, within(1e-6));
        }
    }

    @Test
    void fiveMarksAreEnoughAndFourAreNot() {
        assertThat(CoinScale.ofRim(rim(120, 70, 25, 0, 70, 140, 210, 280), MM)).isPresent();
        assertThat(CoinScale.ofRim(rim(120, 70, 25, 0, 90, 180, 270), MM)).isEmpty();
        assertThat(CoinScale.ofRim(rim(120, 70, 25, 0, 70, 140, 210, 280), 0)).isEmpty();
        assertThat(CoinScale.ofRim(rim(120, 70, 25, 0, 70, 140, 210, 280), 1e-6))
                .isPresent();
    }

    @Test
    void marksThatLeaveTheEllipseOpenGiveNone() {
        assertThat(CoinScale.ofRim(rim(0, 0, 0, UNEVEN), MM))
                .as("all in one place")
                .isEmpty();
        assertThat(CoinScale.ofRim(rim(100, 0, 30, UNEVEN), MM))
                .as("on one line")
                .isEmpty();
        assertThat(CoinScale.ofRim(rim(120, 70, 25, 0, 70, 140, 140, 140), MM))
                .as("three places")
                .isEmpty();
        List<PixelPoint> branches = new ArrayList<>();
        for (double t : new double[] {-1, 0, 1}) {
            branches.add(new PixelPoint(1500 + 100 * Math.cosh(t), 900 + 80 * Math.sinh(t)));
            branches.add(new PixelPoint(1500 - 100 * Math.cosh(t + 0.2), 900 - 80 * Math.sinh(t + 0.2)));
        }
        assertThat(CoinScale.ofRim(branches, MM)).as("a hyperbola").isEmpty();
    }

    /** A mark may lie off the rim by 15 of 100 of the radius there. */
    @ParameterizedTest
    @CsvSource({"1.149, true", "1.151, false", "0.851, true", "0.849, false"})
    void aMarkOffTheRimIsNoneOfIt(double ofRadius, boolean fits) {
        CoinScale coin = new CoinScale(120, 70, Math.toRadians(25), MIDDLE, MM);
        List<PixelPoint> marks = new ArrayList<>(rim(120, 70, 25, 20, 90, 140, 200, 260, 310));
        marks.addAll(rim(120 * ofRadius, 70 * ofRadius, 25, 50));
        assertThat(coin.fits(marks)).isEqualTo(fits);
    }

    /** Between two marks in order, and between the last and the first, lies less than half of the rim. */
    @ParameterizedTest
    @CsvSource({"179, true", "181, false"})
    void noHalfOfTheRimIsWithoutAMark(double gap, boolean fits) {
        CoinScale coin = new CoinScale(100, 100, 0, MIDDLE, MM);
        double rest = (360 - gap) / 4;
        for (double from : new double[] {-170, -100, 0, 90, 175}) {
            double[] at = {from, from + gap, from + gap + rest, from + gap + 2 * rest, from + gap + 3 * rest};
            assertThat(coin.fits(rim(100, 100, 0, at))).as("from " + from).isEqualTo(fits);
        }
    }
}
