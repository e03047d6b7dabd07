package quarterlight.rust.plane;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quarterlight.car.ZoneId;
import quarterlight.rust.TestVisits;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.PhotoScale.KnownLength;
import quarterlight.visit.annotation.PhotoScale.KnownRectangle;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.annotation.TraceKind;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.PhotoId;

class TraceCheckTest {
    private static final PhotoScale RULER = new KnownLength(new PixelPoint(0, 0), new PixelPoint(100, 0), 50);

    private static List<PixelPoint> ring(double... xy) {
        List<PixelPoint> points = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(new PixelPoint(xy[i], xy[i + 1]));
        }
        return points;
    }

    private static Outline outline(double... xy) {
        return new Outline(ring(xy), List.of());
    }

    private static Optional<String> problem(Outline outline, PhotoScale scale) {
        Trace trace = new Trace(
                new PhotoId(1),
                TraceKind.SURFACE,
                outline,
                scale,
                new ZoneId("hood"),
                Optional.empty(),
                Optional.empty());
        return TraceCheck.problem(
                trace, TestVisits.photo(1, MediaKind.PHOTO, 400, 300).file());
    }

    private static Optional<String> problem(double... xy) {
        return problem(outline(xy), RULER);
    }

    private static KnownRectangle rectangle(double... xy) {
        return new KnownRectangle(ring(xy), 100, 50);
    }

    @Test
    void anOutlineMayRunEitherWay() {
        assertThat(problem(10, 10, 60, 10, 60, 60, 10, 60)).isEmpty();
        assertThat(problem(10, 10, 10, 60, 60, 60, 60, 10)).isEmpty();
    }

    @Test
    void aPointMarkedTwiceDoesNoHarm() {
        assertThat(problem(10, 10, 60, 10, 60, 10, 60, 60, 10, 60)).isEmpty();
    }

    @Test
    void anOutlineThatCrossesItselfIsRefusedWithThePlace() {
        assertThat(problem(10, 10, 60, 60, 60, 10, 10, 60).orElseThrow())
                .contains("crosses")
                .contains("(35, 35)");
        assertThat(problem(10, 10, 90, 10, 90, 60, 40, 0, 40, 60)).isPresent();
    }

    @Test
    void anOutlineWithoutAreaIsRefused() {
        assertThat(problem(10, 10, 60, 60, 30, 30).orElseThrow()).contains("no area");
        assertThat(problem(10, 10, 10, 10, 10, 10).orElseThrow()).contains("no area");
        assertThat(problem(10, 10, 11, 10, 10, 11)).isPresent();
    }

    @Test
    void anInnerRingLiesWithin() {
        Outline within = new Outline(ring(10, 10, 90, 10, 90, 90, 10, 90), List.of(ring(20, 20, 40, 20, 40, 40)));
        Outline outside = new Outline(ring(10, 10, 90, 10, 90, 90, 10, 90), List.of(ring(120, 20, 140, 20, 140, 40)));
        assertThat(problem(within, RULER)).isEmpty();
        assertThat(problem(outside, RULER).orElseThrow()).contains("inner ring").contains("outside");
    }

    @Test
    void theEdgeOfThePhotoMayBePassedByAPixel() {
        assertThat(problem(-1, -1, 401, -1, 401, 301, -1, 301)).isEmpty();
        assertThat(problem(-1.01, 10, 60, 10, 60, 60).orElseThrow())
                .contains("outside")
                .contains("400 by 300");
        assertThat(problem(10, 10, 401.5, 10, 60, 60)).isPresent();
        assertThat(problem(10, 10, 60, 301.5, 60, 10)).isPresent();
    }

    @Test
    void aMarkJustOutsideIsDrawnBackToTheEdge() {
        Outline back = OutlineShape.drawnBack(outline(-1, -0.5, 401, 0, 401, 301), 400, 300);
        assertThat(back).isEqualTo(outline(0, 0, 400, 0, 400, 300));
    }

    @Test
    void aScaleOfAnotherPhotoIsRefused() {
        PhotoScale elsewhere = new KnownLength(new PixelPoint(0, 0), new PixelPoint(900, 0), 50);
        assertThat(problem(outline(10, 10, 60, 10, 60, 60), elsewhere).orElseThrow())
                .contains("(900, 0)")
                .contains("same photo");
    }

    @Test
    void aScaleWithoutLengthIsRefused() {
        PhotoScale none = new KnownLength(new PixelPoint(5, 5), new PixelPoint(5, 5), 50);
        assertThat(problem(outline(10, 10, 60, 10, 60, 60), none).orElseThrow()).contains("known length");
        assertThat(PhotoPlane.of(none)).isEmpty();
    }

    @Test
    void cornersOnOneLineOrOutOfOrderAreRefused() {
        Outline patch = outline(10, 10, 60, 10, 60, 60);
        assertThat(problem(patch, rectangle(0, 0, 50, 50, 100, 100, 0, 100)).orElseThrow())
                .contains("one line");
        assertThat(problem(patch, rectangle(0, 0, 100, 0, 0, 50, 100, 50)).orElseThrow())
                .contains("in order round");
        assertThat(problem(patch, rectangle(0, 0, 100, 0, 30, 30, 0, 100)).orElseThrow())
                .contains("in order round");
        List<PixelPoint> reversed = new ArrayList<>(ring(0, 0, 100, 0, 100, 50, 0, 50));
        Collections.reverse(reversed);
        assertThat(problem(patch, new KnownRectangle(reversed, 50, 100))).isEmpty();
    }

    @Test
    void anOutlineBeyondTheHorizonIsRefused() {
        PhotoScale steep = rectangle(100, 200, 300, 200, 250, 150, 150, 150);
        assertThat(problem(outline(150, 160, 250, 160, 250, 190, 150, 190), steep))
                .isEmpty();
        assertThat(problem(outline(150, 20, 250, 20, 250, 190, 150, 190), steep).orElseThrow())
                .contains("horizon");
    }

    @Test
    void aFilmIsNotOutlined() {
        Trace trace = new Trace(
                new PhotoId(1),
                TraceKind.HOLE,
                outline(10, 10, 60, 10, 60, 60),
                RULER,
                new ZoneId("hood"),
                Optional.empty(),
                Optional.empty());
        assertThat(TraceCheck.problem(
                        trace, TestVisits.photo(1, MediaKind.FILM, 400, 300).file()))
                .isPresent();
    }
}
