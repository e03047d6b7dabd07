package quarterlight.rust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import quarterlight.car.ZoneId;
import quarterlight.rust.plane.MarkedArea;
import quarterlight.rust.plane.OutlineShape;
import quarterlight.rust.plane.PhotoPlane;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.PhotoScale.KnownLength;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.annotation.TraceKind;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.RecordId;

/**
 * How the uncertainties of traces add up, by hand from first-order propagation (GUM, JCGM 100:2008, section 5): what each trace has of its own
 * as the root of squares, what a shared scale moves as a plain sum; marks of a shared scale move all its traces together (docs/methods/rust.md).
 */
class RustPatchesTest {
    private static final PhotoScale RULER = new KnownLength(new PixelPoint(0, 0), new PixelPoint(100, 0), 100);
    private static final PhotoScale OTHER = new KnownLength(new PixelPoint(0, 9), new PixelPoint(100, 9), 100);
    private static final Offset<Double> EXACT = within(1e-9);

    private final List<MeasuredTrace> traces = new ArrayList<>();

    /** A square of 10 mm a side whose left edge lies at x, with slopes of 2 and 3 mm2 a pixel and 4 mm2 of unseen tilt, marks off by 1.5 pixels. */
    private void square(double x, long photo, PhotoScale scale, String patch, MarkedArea area) {
        Outline outline = new Outline(
                List.of(
                        new PixelPoint(x, 20),
                        new PixelPoint(x + 10, 20),
                        new PixelPoint(x + 10, 30),
                        new PixelPoint(x, 30)),
                List.of());
        Trace trace = new Trace(
                new PhotoId(photo),
                TraceKind.SURFACE,
                outline,
                scale,
                new ZoneId("hood"),
                Optional.ofNullable(patch),
                Optional.empty());
        traces.add(new MeasuredTrace(
                new RecordId(traces.size() + 1L),
                trace,
                PhotoPlane.of(scale).orElseThrow(),
                OutlineShape.of(outline),
                area));
    }

    private static MarkedArea marked(double outlineSlope, double scaleSlope, double tilt) {
        return new MarkedArea(100, outlineSlope, List.of(scaleSlope, -scaleSlope), 1.5, tilt);
    }

    private RustPatches together() {
        return RustPatches.of(traces);
    }

    @Test
    void oneTraceHasItsOwnArea() {
        square(0, 1, RULER, null, marked(2, 3, 4));
        assertThat(together().mm2()).isCloseTo(100, EXACT);
        assertThat(together().sdMm2())
                .isCloseTo(Math.sqrt(2.25 * (4 + 9 + 9) + 16), EXACT)
                .isCloseTo(traces.get(0).area().sdMm2(), EXACT);
        assertThat(together().patchesMm2()).containsExactly(100.0);
    }

    @Test
    void aSharedScaleMovesBothTracesTogether() {
        square(0, 1, RULER, null, marked(2, 3, 4));
        square(50, 1, RULER, null, marked(1, 5, 6));
        assertThat(together().mm2()).isCloseTo(200, EXACT);
        assertThat(together().sdMm2()).isCloseTo(Math.sqrt(2.25 * (4 + 1 + 2 * 8 * 8) + 10 * 10), EXACT);
    }

    @Test
    void twoScalesOfOnePhotoMoveTheirTracesEachAlone() {
        square(0, 1, RULER, null, marked(2, 3, 4));
        square(50, 1, OTHER, null, marked(1, 5, 6));
        assertThat(together().sdMm2()).isCloseTo(Math.sqrt(2.25 * (4 + 1 + 2 * 9 + 2 * 25) + 16 + 36), EXACT);
    }

    @Test
    void tracesOfTwoPhotosAreMarkedEachAlone() {
        square(0, 1, RULER, null, marked(2, 3, 4));
        square(0, 2, RULER, null, marked(1, 5, 6));
        assertThat(together().mm2()).isCloseTo(200, EXACT);
        assertThat(together().sdMm2()).isCloseTo(Math.sqrt(2.25 * (4 + 1 + 2 * 9 + 2 * 25) + 16 + 36), EXACT);
        assertThat(together().patchesMm2()).containsExactly(100.0, 100.0);
    }

    /** The second lies half on the first: half of its area, and of its own errors, is added. */
    @Test
    void anOverlapCountsOnceWithHalfOfTheErrors() {
        square(0, 1, RULER, null, marked(2, 3, 4));
        square(5, 1, RULER, null, marked(1, 5, 6));
        assertThat(together().mm2()).isCloseTo(150, EXACT);
        assertThat(together().sdMm2()).isCloseTo(Math.sqrt(2.25 * (4 + 0.25 + 2 * 5.5 * 5.5) + 7 * 7), EXACT);
        assertThat(together().patchesMm2()).hasSize(1);
        assertThat(together().patchesMm2().get(0)).isCloseTo(150, EXACT);
    }

    @Test
    void ofTwoPhotosOfOnePatchTheSurerCountsWhicheverCameFirst() {
        for (double second : new double[] {1, 3}) {
            traces.clear();
            square(0, 1, RULER, "sill", marked(2, 0, 0));
            square(50, 2, RULER, "sill", marked(second, 0, 0));
            square(80, 2, OTHER, null, marked(0, 0, 0));
            assertThat(together().mm2()).isCloseTo(200, EXACT);
            assertThat(together().sdMm2()).isCloseTo(1.5 * Math.min(2, second), EXACT);
        }
    }

    @Test
    void ofEqualViewsTheFirstCounts() {
        square(0, 1, RULER, "sill", marked(2, 0, 0));
        square(50, 2, RULER, "sill", new MarkedArea(100, 2, List.of(), 1.5, 0));
        square(5, 1, RULER, "sill", marked(0, 0, 0));
        // the same sd on both photos; the first shows 150 mm2, the second 100
        assertThat(together().mm2()).isCloseTo(150, EXACT);
    }

    @Test
    void nothingIsNothing() {
        assertThat(together().mm2()).isZero();
        assertThat(together().sdMm2()).isZero();
        assertThat(together().patchesMm2()).isEmpty();
    }
}
