package quarterlight.rust.plane;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import quarterlight.rust.plane.ScaleCover.Kind;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.PhotoScale.KnownRectangle;
import quarterlight.visit.annotation.PixelPoint;

/** The stated error holds for every kind of scale, also where the scale cannot see the tilt. */
class ScaleCoverTest {
    private static final long SEED = 20261129;

    @ParameterizedTest
    @EnumSource(Kind.class)
    void twoStandardDeviationsCover90To99Of100AtTiltsOf0To45Degrees(Kind kind) {
        int covered = 0;
        for (double tilt = 0; tilt <= 45; tilt += 5) {
            covered += ScaleCover.covered(kind, tilt, 200, SEED + (long) tilt);
        }
        assertThat(covered / 20.0).as("seed %d", SEED).isBetween(90.0, 99.0);
    }

    @ParameterizedTest
    @CsvSource({
        "RULER, 0",
        "RULER, 30",
        "RULER, 45",
        "COIN, 0",
        "COIN, 30",
        "COIN, 45",
        "CARD, 0",
        "CARD, 30",
        "CARD, 45"
    })
    void noTiltIsCoveredLessThan88Of100(Kind kind, double tilt) {
        assertThat(ScaleCover.covered(kind, tilt, 500, SEED) / 5.0)
                .as("seed %d", SEED)
                .isGreaterThan(88);
    }

    private static final double[] CARD = {85.60, 53.98};
    private static final double[] A4 = {210, 297};

    @ParameterizedTest
    @CsvSource({"0", "15", "30", "45"})
    void aThingOfItsTrueSizeIsAlmostNeverDoubted(double tilt) {
        assertThat(ScaleCover.caught(CARD, CARD, tilt, 1000, SEED)).isLessThan(15);
        assertThat(ScaleCover.caught(A4, A4, tilt, 1000, SEED)).isLessThan(15);
    }

    @ParameterizedTest
    @CsvSource({"0, 99, 60", "15, 98, 40", "30, 96, 20", "45, 88, 10"})
    void aCardCalledA4IsCaughtByTheCameraItWouldImply(double tilt, double shortSideFirst, double longSideFirst) {
        assertThat(ScaleCover.caught(CARD, A4, tilt, 1000, SEED) / 10.0).isGreaterThan(shortSideFirst);
        assertThat(ScaleCover.caught(CARD, new double[] {297, 210}, tilt, 1000, SEED) / 10.0)
                .isGreaterThan(longSideFirst);
    }

    @Test
    void theSentenceSaysWhatItMayBe() {
        List<PixelPoint> corners = List.of(
                new PixelPoint(1572, 1230),
                new PixelPoint(2428, 1230),
                new PixelPoint(2428, 1770),
                new PixelPoint(1572, 1770));
        KnownRectangle called = new KnownRectangle(corners, 297, 210);
        assertThat(TraceCheck.ofStatedSize(called, Lens.usual(4000, 3000)).orElseThrow())
                .contains("297 x 210 mm")
                .contains("bank or identity card")
                .contains("85.6 x 53.98 mm");
        KnownRectangle card = new KnownRectangle(corners, 85.60, 53.98);
        assertThat(TraceCheck.ofStatedSize(card, Lens.usual(4000, 3000))).isEmpty();
    }

    @Test
    void aLengthAlongTheRulerIsSureAndOneAcrossItIsNot() {
        PhotoScale ruler = new PhotoScale.KnownLength(new PixelPoint(1000, 1000), new PixelPoint(2000, 1000), 500);
        double along = sd(new PixelPoint(1000, 1010), new PixelPoint(2000, 1010), ruler);
        double across = sd(new PixelPoint(1500, 510), new PixelPoint(1500, 1510), ruler);
        assertThat(along).isLessThan(5);
        assertThat(across).isBetween(0.24 * 500, 0.27 * 500);
    }

    private static double sd(PixelPoint from, PixelPoint to, PhotoScale scale) {
        return MarkedLength.of(from, to, scale, MarkedArea.USUAL_MARK_PX)
                .orElseThrow()
                .sdMm();
    }

    /** The case that began it: a ruler at 45 degrees stated 0.8 percent, was off by 24, and won over a card. */
    @Test
    void aRulerNeverWinsOverACardBesideTheSamePatch() {
        Outline outline = new Outline(
                List.of(
                        new PixelPoint(1900, 1400),
                        new PixelPoint(2200, 1400),
                        new PixelPoint(2200, 1700),
                        new PixelPoint(1900, 1700)),
                List.of());
        PhotoScale ruler = new PhotoScale.KnownLength(new PixelPoint(1000, 1800), new PixelPoint(3000, 1800), 400);
        PhotoScale card = new KnownRectangle(
                List.of(
                        new PixelPoint(2300, 1400),
                        new PixelPoint(2728, 1400),
                        new PixelPoint(2728, 1670),
                        new PixelPoint(2300, 1670)),
                85.60,
                53.98);
        Lens lens = Lens.usual(4000, 3000);
        MarkedArea byRuler = MarkedArea.of(outline, ruler, MarkedArea.USUAL_MARK_PX, lens);
        MarkedArea byCard = MarkedArea.of(outline, card, MarkedArea.USUAL_MARK_PX, lens);
        assertThat(byRuler.sdMm2() / byRuler.mm2()).isGreaterThan(0.24);
        assertThat(byCard.sdMm2() / byCard.mm2()).isLessThan(0.05);
    }
}
