package quarterlight.rust.plane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.rust.TestVisits;
import quarterlight.visit.annotation.HiddenRegion;
import quarterlight.visit.annotation.NoteShape;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PhotoNote;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.PhotoScale.Coin;
import quarterlight.visit.annotation.PhotoScale.KnownLength;
import quarterlight.visit.annotation.PhotoScale.KnownRectangle;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.PhotoId;

/** Single formulas of docs/methods/rust.md, worked out by hand on the simplest figures. */
class PlaneRulesTest {
    private static final Lens LENS = Lens.usual(4000, 3000);
    private static final KnownLength RULER = new KnownLength(p(1000, 1000), p(1100, 1000), 100);
    private static final PhotoFile PHOTO =
            TestVisits.photo(1, MediaKind.PHOTO, 4000, 3000).file();

    private static PixelPoint p(double x, double y) {
        return new PixelPoint(x, y);
    }

    private static List<PixelPoint> square(double x, double y, double side) {
        return List.of(p(x, y), p(x + side, y), p(x + side, y + side), p(x, y + side));
    }

    /** 0.8 of the longer side; a photo of unknown size has 3000 by 2250 pixels or reaches to its outermost mark. */
    @Test
    void theUsualLensIsFourFifthsOfTheLongerSide() {
        assertThat(LENS.focalPx()).isCloseTo(3200, within(1e-9));
        assertThat(LENS.middle()).isEqualTo(p(2000, 1500));
        assertThat(Lens.usual(3000, 4000).focalPx()).isCloseTo(3200, within(1e-9));
        assertThat(Lens.ofMarks(List.of(p(10, 10))).middle()).isEqualTo(p(1500, 1125));
        assertThat(Lens.ofMarks(List.of(p(4000.5, 10))).middle()).isEqualTo(p(2000.5, 1125));
        assertThat(Lens.ofMarks(List.of(p(10, 2500))).middle()).isEqualTo(p(1500, 1250));
        assertThatThrownBy(() -> new Lens(0, p(0, 0))).isInstanceOf(IllegalArgumentException.class);
    }

    /** A quarter at the ruler itself; away from it 1.06 times the angle, two thirds of that for a length. */
    @Test
    void aRulerLeavesItsTiltAndTheSlopeAwayFromItOpen() {
        assertThat(UnseenTilt.ofArea(p(1050, 1000), RULER, LENS)).isCloseTo(0.25, within(1e-12));
        assertThat(UnseenTilt.ofArea(p(1050, 1320), RULER, LENS))
                .isCloseTo(Math.hypot(0.25, 1.06 * 0.1), within(1e-12));
        assertThat(UnseenTilt.ofLength(p(1000, 1000), p(1100, 1000), RULER, LENS))
                .isCloseTo(0, within(1e-12));
        assertThat(UnseenTilt.ofLength(p(1050, 950), p(1050, 1050), RULER, LENS))
                .isCloseTo(0.25, within(1e-12));
        assertThat(UnseenTilt.ofLength(p(1020, 970), p(1080, 1030), RULER, LENS))
                .isCloseTo(0.25 * Math.sqrt(0.5), within(1e-12));
        assertThat(UnseenTilt.ofLength(p(1000, 1320), p(1100, 1320), RULER, LENS))
                .isCloseTo(2.0 / 3 * 1.06 * 0.1, within(1e-12));
        assertThat(UnseenTilt.ofLength(p(1050, 1000), p(1050, 1000), RULER, LENS))
                .isCloseTo(0.25, within(1e-12));
        assertThat(UnseenTilt.ofArea(p(3000, 2900), new KnownRectangle(square(0, 0, 100), 10, 10), LENS))
                .isZero();
    }

    private static Coin coin(double x, double y, double wide, double high) {
        List<PixelPoint> rim = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            double a = Math.PI * i / 6;
            rim.add(p(x + wide * Math.cos(a), y + high * Math.sin(a)));
        }
        return new Coin(rim, 24.26);
    }

    /** An ellipse half as high as wide leans by 60 degrees up or down; a round coin off the middle leans by its own line of sight. */
    @Test
    void aCoinLeavesOpenWhichEndIsNearer() {
        Coin leaning = coin(2000, 1500, 100, 50);
        assertThat(UnseenTilt.ofArea(p(2000, 1500 + 320), leaning, LENS))
                .isCloseTo(3 * Math.sqrt(3) * 0.1, within(1e-6));
        assertThat(UnseenTilt.ofArea(p(2000 + 320, 1500), leaning, LENS)).isCloseTo(0, within(1e-6));
        assertThat(UnseenTilt.ofLength(p(2000, 1820), p(2000, 1820), leaning, LENS))
                .isCloseTo(2 * Math.sqrt(3) * 0.1, within(1e-6));
        Coin off = coin(2320, 1820, 100, 100);
        assertThat(UnseenTilt.ofArea(p(2320 + 640, 1820 + 320), off, LENS))
                .isCloseTo(3 * (0.2 * 0.1 + 0.1 * 0.1), within(1e-4));
        assertThat(UnseenTilt.ofArea(p(2320 - 320, 1820 + 320), off, LENS)).isCloseTo(0, within(1e-4));
    }

    /** A square of 100 pixels by a ruler of 1 mm a pixel: each corner moves it by half its diagonal, each end of the ruler by twice its area a ruler's length. */
    @Test
    void theSlopesOfASquareAreThoseOfItsSides() {
        Outline outline = new Outline(square(1000, 1100, 100), List.of());
        MarkedArea area = MarkedArea.of(outline, RULER, 1.5, LENS);
        assertThat(area.mm2()).isCloseTo(10_000, within(1e-6));
        assertThat(area.outlineSlope()).isCloseTo(Math.sqrt(4 * 5000), within(1e-6));
        assertThat(area.scaleSlopes()).hasSize(4);
        assertThat(area.scaleSlopes().get(0)).isCloseTo(200, within(0.02));
        assertThat(area.scaleSlopes().get(1)).isCloseTo(0, within(1e-6));
        assertThat(area.scaleSlopes().get(2)).isCloseTo(-200, within(0.02));
        double tilt = 10_000 * Math.hypot(0.25, 1.06 * 150 / 3200);
        assertThat(area.tiltMm2()).isCloseTo(tilt, within(1e-6));
        assertThat(area.sdMm2()).isCloseTo(Math.hypot(1.5 * Math.sqrt(20_000 + 80_000), tilt), within(0.1));
    }

    @Test
    void aHoleTakesItsAreaAwayAndAddsItsErrors() {
        Outline ring = new Outline(square(1000, 1100, 100), List.of(square(1020, 1120, 50)));
        MarkedArea area = MarkedArea.of(ring, RULER, 1.5, LENS);
        assertThat(area.mm2()).isCloseTo(7500, within(1e-6));
        assertThat(area.outlineSlope()).isCloseTo(Math.sqrt(4 * 5000 + 4 * 1250), within(1e-6));
        assertThat(area.scaleSlopes().get(0)).isCloseTo(150, within(0.02));
        assertThatThrownBy(() -> MarkedArea.of(ring, new KnownLength(p(1, 1), p(1, 1), 5), 1.5, LENS))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static double misfit(double tilt, double w, double h) {
        Scene scene = new Scene(tilt, 30, 0.1, 2250, 1500);
        double x = 85.60 / 2;
        double y = 53.98 / 2;
        List<PixelPoint> corners =
                List.of(scene.project(-x, -y), scene.project(x, -y), scene.project(x, y), scene.project(-x, y));
        return ImpliedCamera.misfit(new KnownRectangle(corners, w, h), new Lens(1800, p(1125, 750)))
                .orElseThrow();
    }

    /** The pinhole camera that took it fits exactly; the same corners called an A4 sheet are passed by one in 250 only. */
    @ParameterizedTest
    @CsvSource({"0", "20", "40"})
    void theCameraThatSawACardFitsItAndNoA4Sheet(double tilt) {
        assertThat(misfit(tilt, 85.60, 53.98)).isLessThan(1e-6);
        assertThat(misfit(tilt, 85.60 * 1.01, 53.98)).isBetween(1e-4, ImpliedCamera.CAUGHT);
        assertThat(misfit(tilt, 297, 210)).isGreaterThan(4);
        assertThat(misfit(tilt, 53.98, 85.60)).isGreaterThan(ImpliedCamera.CAUGHT);
    }

    @Test
    void aWrongThingIsSaidWithWhatMayLieThere() {
        List<PixelPoint> corners = List.of(p(1572, 1230), p(2428, 1230), p(2428, 1770), p(1572, 1770));
        assertThat(ImpliedCamera.problem(new KnownRectangle(corners, 85.60, 53.98), LENS))
                .isEmpty();
        assertThat(ImpliedCamera.problem(new KnownRectangle(corners, 297, 210), LENS)
                        .orElseThrow())
                .contains("297 x 210 mm", "bank or identity card", "85.6 x 53.98 mm");
        assertThat(ImpliedCamera.problem(new KnownRectangle(corners, 900, 100), LENS)
                        .orElseThrow())
                .contains("900 x 100 mm", "would suit");
        List<PixelPoint> strip = List.of(p(1000, 1400), p(3000, 1400), p(3000, 1500), p(1000, 1500));
        assertThat(ImpliedCamera.problem(new KnownRectangle(strip, 297, 210), LENS)
                        .orElseThrow())
                .doesNotContain("would suit");
        assertThat(TraceCheck.ofStatedSize(RULER, LENS)).isEmpty();
    }

    @Test
    void knownThingsHaveTheirPublishedSizes() {
        assertThat(KnownThing.size(85.60, 53.98)).isEqualTo("85.6 x 53.98 mm");
        assertThat(KnownThing.size(210, 297)).isEqualTo("210 x 297 mm");
        KnownThing quarter = KnownThing.all().stream()
                .filter(thing -> thing.name().equals("US quarter"))
                .findFirst()
                .orElseThrow();
        assertThat(quarter.areaMm2()).isCloseTo(462.24, within(0.01));
        assertThat(KnownThing.all().get(0).areaMm2()).isCloseTo(4620.69, within(0.01));
        assertThat(KnownThing.all().stream().filter(KnownThing::round)).hasSize(14);
        assertThatThrownBy(() -> new KnownThing("coin", 20, 21, true, "none"))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new KnownThing("strip", 0, 21, false, "none"))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new KnownThing("strip", 21, 0, false, "none"))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static PhotoNote note(NoteShape shape, PhotoScale scale, PixelPoint... points) {
        return new PhotoNote(
                new PhotoId(1),
                Optional.empty(),
                shape,
                List.of(points),
                Optional.of("look"),
                Optional.ofNullable(scale));
    }

    private static Optional<String> points(NoteShape shape, PixelPoint... points) {
        return NoteCheck.ofPoints(note(shape, null, points), PHOTO);
    }

    @Test
    void aNoteLiesOnItsPhotoAndHasRoom() {
        assertThat(points(NoteShape.TEXT, p(4001, 3001))).isEmpty();
        assertThat(points(NoteShape.TEXT, p(4001.1, 5))).get().asString().contains("(4001, 5)", "4000 by 3000");
        assertThat(points(NoteShape.TEXT, p(5, 3001.1))).isPresent();
        assertThat(points(NoteShape.TEXT, p(-1, -1))).isEmpty();
        assertThat(points(NoteShape.TEXT, p(-1.1, 5))).isPresent();
        assertThat(points(NoteShape.TEXT, p(5, -1.1))).isPresent();
        assertThat(points(NoteShape.BOX, p(10, 10), p(11, 20))).isEmpty();
        assertThat(points(NoteShape.BOX, p(20, 10), p(19.1, 20)))
                .get()
                .asString()
                .contains("draw it larger");
        assertThat(points(NoteShape.BOX, p(10, 20), p(20, 20.9))).isPresent();
        assertThat(points(NoteShape.ARROW, p(10, 10), p(10.6, 10.8))).isEmpty();
        assertThat(points(NoteShape.ARROW, p(10, 10), p(10.6, 10.7))).isPresent();
        assertThat(points(NoteShape.ARROW, p(10, 10), p(10, 20))).isEmpty();
    }

    @Test
    void theScaleOfANoteLiesOnThePhotoAndSeesItsLine() {
        assertThat(NoteCheck.ofScale(note(NoteShape.ARROW, null, p(1, 1), p(9, 9)), PHOTO))
                .isEmpty();
        assertThat(NoteCheck.ofScale(note(NoteShape.MEASURE, RULER, p(1, 1), p(9, 9)), PHOTO))
                .isEmpty();
        KnownLength outside = new KnownLength(p(1, 1), p(4009, 1), 9);
        assertThat(NoteCheck.ofScale(note(NoteShape.MEASURE, outside, p(1, 1), p(9, 9)), PHOTO))
                .get()
                .asString()
                .contains("(4009, 1)", "same photo");
        // two sides that run together at (1000, 0): the horizon lies above, at y = 0
        KnownRectangle far =
                new KnownRectangle(List.of(p(900, 500), p(1100, 500), p(1200, 1000), p(800, 1000)), 100, 100);
        assertThat(NoteCheck.ofScale(note(NoteShape.MEASURE, far, p(900, 700), p(1100, 700)), PHOTO))
                .isEmpty();
        assertThat(NoteCheck.ofScale(note(NoteShape.MEASURE, far, p(900, 700), p(1100, 5)), PHOTO))
                .get()
                .asString()
                .contains("horizon");
        PhotoPlane plane = PhotoPlane.of(far).orElseThrow();
        // the depth of a point goes with its distance from the horizon: 750 on the mean of the corners, a twentieth is
        // 37.5
        assertThat(plane.sees(p(1000, 38.5))).isTrue();
        assertThat(plane.sees(p(1000, 36.5))).isFalse();
    }

    @Test
    void aHiddenRegionLiesOnItsPhotoAndIsOneLoop() {
        assertThat(NoteCheck.ofOutline(
                        new HiddenRegion(new PhotoId(1), new Outline(square(10, 10, 50), List.of()), Optional.empty()),
                        PHOTO))
                .isEmpty();
        assertThat(NoteCheck.ofOutline(
                        new HiddenRegion(
                                new PhotoId(1), new Outline(square(3990, 10, 50), List.of()), Optional.empty()),
                        PHOTO))
                .get()
                .asString()
                .contains("lies outside", "within the photo");
        Outline crossed = new Outline(List.of(p(0, 0), p(50, 50), p(50, 0), p(0, 50)), List.of());
        assertThat(NoteCheck.ofOutline(new HiddenRegion(new PhotoId(1), crossed, Optional.empty()), PHOTO))
                .get()
                .asString()
                .contains("crosses");
    }

    @Test
    void theAreaOfARingHasTheSignOfItsTurn() {
        assertThat(Shoelace.signedArea(square(5, 5, 10))).isCloseTo(100, within(1e-9));
        List<PixelPoint> back = new ArrayList<>(square(5, 5, 10));
        java.util.Collections.reverse(back);
        assertThat(Shoelace.signedArea(back)).isCloseTo(-100, within(1e-9));
        assertThat(Shoelace.area(back)).isCloseTo(100, within(1e-9));
        assertThat(Shoelace.signedArea(List.of())).isZero();
    }
}
