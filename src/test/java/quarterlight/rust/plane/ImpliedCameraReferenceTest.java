package quarterlight.rust.plane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.visit.annotation.PhotoScale.KnownRectangle;
import quarterlight.visit.annotation.PixelPoint;

/**
 * The least chi square of corners under a stated size, worked out by a program of its own in Python with the linear solver of NumPy: the map of four
 * points by eight equations, the covariance by moving each corner half a pixel.
 */
class ImpliedCameraReferenceTest {
    private static final Lens LENS = new Lens(1800, new PixelPoint(1125, 750));
    private static final List<PixelPoint> BELOW = List.of(p(700, 400), p(1500, 450), p(1430, 980), p(740, 900));
    private static final List<PixelPoint> ASIDE = List.of(p(900, 300), p(1300, 380), p(1350, 700), p(860, 640));

    private static PixelPoint p(double x, double y) {
        return new PixelPoint(x, y);
    }

    @ParameterizedTest
    @CsvSource({
        "true, 85.6, 53.98, 98.7235856754362",
        "true, 100, 60, 194.9242708656816",
        "true, 53.98, 85.6, 270.97690192324694",
        "true, 297, 210, 3.676460991927552",
        "false, 85.6, 53.98, 635.3497499643856",
        "false, 100, 60, 772.6270830464025",
        "false, 53.98, 85.6, 115.06378384432631",
        "false, 297, 210, 340.560610879083"
    })
    void theMisfitIsThatOfAnotherProgram(boolean below, double width, double height, double chiSquare) {
        KnownRectangle claimed = new KnownRectangle(below ? BELOW : ASIDE, width, height);
        assertThat(ImpliedCamera.misfit(claimed, LENS).orElseThrow()).isCloseTo(chiSquare, within(chiSquare * 1e-7));
    }

    @Test
    void whatCanBeSeenSoIsNoProblemAndWhatCannotIsNamed() {
        assertThat(ImpliedCamera.problem(new KnownRectangle(BELOW, 297, 210), LENS))
                .isEmpty();
        assertThat(ImpliedCamera.problem(new KnownRectangle(BELOW, 85.6, 53.98), LENS))
                .get()
                .asString()
                .contains("would suit: A6 sheet, 105 x 148 mm");
    }
}
