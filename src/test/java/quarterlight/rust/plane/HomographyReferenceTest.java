package quarterlight.rust.plane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import quarterlight.visit.annotation.PixelPoint;

/**
 * Published homographies and areas: A from a JavaScript test that quotes a computer-vision library, B from ijp-color's
 * PerspectiveTransformTest, C from mexopencv's TestGetPerspectiveTransform; polygon areas from textbook examples; the card
 * is ISO/IEC 7810 ID-1.
 */
class HomographyReferenceTest {
    private static List<PixelPoint> points(double... xy) {
        List<PixelPoint> points = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(new PixelPoint(xy[i], xy[i + 1]));
        }
        return points;
    }

    private static Homography map(List<PixelPoint> from, List<PixelPoint> to) {
        return Homography.ofFourPoints(from, to).orElseThrow();
    }

    @Test
    void caseAHasThePublishedMatrixAndPoint() {
        Homography map = map(points(33, 582, 151, 579, 145, 702, 25, 703), points(0, 0, 300, 0, 300, 300, 0, 300));
        double[] published = {
            2.86405074,
            1.89358727e-01,
            -2.04720453e+02,
            7.10878995e-02,
            2.79612405,
            -1.62969010e+03,
            1.60734029e-04,
            1.73337133e-04,
            1.0
        };
        for (int i = 0; i < 9; i++) {
            assertThat(map.rows()[i])
                    .as("h%d", i)
                    .isCloseTo(published[i], Offset.offset(Math.abs(published[i]) * 1e-8));
        }
        PixelPoint mapped = map.map(new PixelPoint(90, 640));
        // the published 154.819104, 147.704761 come from the rounded matrix; these from rational arithmetic
        assertThat(mapped.x()).isCloseTo(154.8191003655579, within(1e-9)).isCloseTo(154.819104, within(1e-5));
        assertThat(mapped.y()).isCloseTo(147.7047583696729, within(1e-9)).isCloseTo(147.704761, within(1e-5));
    }

    @Test
    void caseBHasThePublishedPoint() {
        PixelPoint mapped = map(points(0, 0, 6, 0, 6, 4, 0, 4), points(207, 95, 461, 132, 436, 312, 198, 255))
                .map(new PixelPoint(3, 2));
        assertThat(mapped.x()).isCloseTo(317.07786, within(1e-5));
        assertThat(mapped.y()).isCloseTo(199.30959, within(1e-5));
    }

    @Test
    void caseCIsAQuarterTurn() {
        Homography map = map(points(0, 1, 1, 1, 1, 0, .25, .25), points(1, 1, 1, 0, 0, 0, .25, .75));
        assertThat(map.rows()).containsExactly(new double[] {0, 1, 0, -1, 0, 1, 0, 0, 1}, Offset.offset(1e-12));
    }

    @Test
    void threePointsOnOneLineAreRefusedOnEitherSide() {
        List<PixelPoint> line = points(0, 0, 1000, 1000, 2000, 2000, 0, 500);
        List<PixelPoint> square = points(0, 0, 1, 0, 1, 1, 0, 1);
        assertThat(Homography.ofFourPoints(line, square)).isEmpty();
        assertThat(Homography.ofFourPoints(square, line)).isEmpty();
        assertThat(Homography.ofFourPoints(points(5, 5, 5, 5, 5, 5, 5, 5), square))
                .isEmpty();
    }

    @Test
    void farFromTheOriginItIsAsGood() {
        List<PixelPoint> square = points(0, 0, 100, 0, 100, 100, 0, 100);
        Homography map = map(points(1e6, 1e6, 1e6 + 400, 1e6 + 10, 1e6 + 390, 1e6 + 380, 1e6 + 20, 1e6 + 400), square);
        PixelPoint corner = map.map(new PixelPoint(1e6 + 390, 1e6 + 380));
        assertThat(corner.x()).isCloseTo(100, within(1e-5));
        assertThat(corner.y()).isCloseTo(100, within(1e-5));
    }

    @Test
    void areasOfPolygonsAreThePublishedOnes() {
        assertThat(Shoelace.area(points(1, 6, 3, 1, 7, 2, 4, 4, 8, 5))).isCloseTo(16.5, within(1e-12));
        List<PixelPoint> five = points(3, 4, 5, 11, 12, 8, 9, 5, 5, 6);
        assertThat(Shoelace.signedArea(five)).isCloseTo(-30, within(1e-12));
        assertThat(Shoelace.area(five)).isCloseTo(30, within(1e-12));
        assertThat(Shoelace.area(points(0, 0, 85.60, 0, 85.60, 53.98, 0, 53.98)))
                .isCloseTo(4620.688, within(1e-9));
    }
}
