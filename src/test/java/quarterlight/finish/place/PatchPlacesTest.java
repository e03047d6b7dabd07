package quarterlight.finish.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import quarterlight.car.View;
import quarterlight.visit.pin.ViewPoint;

/** A fender of 1,200 x 700 mm with a round wheel opening in its lower edge, in a view of 2,000 x 1,000 mm. */
class PatchPlacesTest {
    private static final double WIDE = 2000;
    private static final double HIGH = 1000;
    private static final int PATCHES = 200_000;
    private static final PanelOutline FENDER = fender();
    private static final quarterlight.units.Area AREA =
            new quarterlight.units.Area(FENDER.shape().getArea());

    private static PanelOutline fender() {
        try {
            Geometry sheet = new WKTReader().read("POLYGON ((300 200, 1500 200, 1500 900, 300 900, 300 200))");
            Geometry wheel = new WKTReader().read("POINT (800 900)").buffer(330, 64);
            return new PanelOutline(View.LEFT, WIDE, HIGH, sheet.difference(wheel));
        } catch (ParseException e) {
            throw new AssertionError(e);
        }
    }

    private static ViewPoint at(double xMm, double yMm) {
        return new ViewPoint(View.LEFT, xMm / WIDE, yMm / HIGH);
    }

    private static double missed(List<ViewPoint> places) {
        return PatchPlaces.missed(AREA, Optional.of(FENDER), places.size(), places);
    }

    private static List<ViewPoint> scattered(long seed, int count) {
        Random random = new Random(seed);
        List<ViewPoint> places = new ArrayList<>();
        for (int n = 0; n < count; n++) {
            places.add(at(250 + 1300 * random.nextDouble(), 150 + 800 * random.nextDouble()));
        }
        return places;
    }

    /**
     * Patches thrown at the panel, its shape drawn once more by other means: how many have no spot on them. With a part of the panel that the
     * view does not show, that many more patches lie where no spot of this view can be.
     */
    private static double thrown(List<ViewPoint> places, double turnedAway, long seed) {
        Path2D sheet = new Path2D.Double();
        sheet.moveTo(300, 200);
        sheet.lineTo(1500, 200);
        sheet.lineTo(1500, 900);
        sheet.lineTo(300, 900);
        sheet.closePath();
        Area panel = new Area(sheet);
        panel.subtract(new Area(new Ellipse2D.Double(800 - 330, 900 - 330, 660, 660)));
        Random random = new Random(seed);
        int free = 0;
        int thrown = 0;
        while (thrown < PATCHES) {
            if (random.nextDouble() < turnedAway) {
                thrown++;
                free++;
                continue;
            }
            double x = 300 + 1200 * random.nextDouble();
            double y = 200 + 700 * random.nextDouble();
            while (!panel.contains(x, y)) {
                x = 300 + 1200 * random.nextDouble();
                y = 200 + 700 * random.nextDouble();
            }
            double px = x;
            double py = y;
            thrown++;
            free += places.stream().allMatch(spot -> Math.hypot(spot.x() * WIDE - px, spot.y() * HIGH - py) > 50)
                    ? 1
                    : 0;
        }
        return (double) free / PATCHES;
    }

    /** Scattered over and beside the panel, so that discs overlap, hang over its edge and lie in the wheel opening. */
    @ParameterizedTest
    @CsvSource({"1,1", "2,5", "3,12", "4,30", "5,80"})
    void agreesWithPatchesThrownAtThePanel(long seed, int spots) {
        List<ViewPoint> places = scattered(seed, spots);
        assertThat(missed(places)).isCloseTo(thrown(places, 0, seed), within(.004));
    }

    @Test
    void whatTurnsAwayFromTheViewIsNotReached() {
        List<ViewPoint> places = scattered(6, 20);
        quarterlight.units.Area larger = new quarterlight.units.Area(AREA.mm2() * 1.25);
        double said = PatchPlaces.missed(larger, Optional.of(FENDER), 20, places);
        assertThat(said).isCloseTo(thrown(places, .2, 6), within(.004)).isGreaterThan(missed(places) + .01);
    }

    @Test
    void spotsCloseTogetherMissMoreThanSpreadOnes() {
        List<ViewPoint> close = new ArrayList<>();
        List<ViewPoint> spread = new ArrayList<>();
        for (int n = 0; n < 8; n++) {
            close.add(at(700 + 20 * n, 350));
            spread.add(at(370 + 150 * n, 300));
        }
        double anywhere = PatchPlaces.missed(AREA, Optional.empty(), 8, List.of());
        assertThat(missed(close)).isGreaterThan(anywhere + .03);
        assertThat(missed(spread)).isLessThan(anywhere - .001);
    }

    @Test
    void spotsWithoutAPlaceLieAnywhere() {
        double one = Math.PI * 50 * 50 / AREA.mm2();
        assertThat(PatchPlaces.missed(AREA, Optional.of(FENDER), 0, List.of())).isEqualTo(1);
        assertThat(PatchPlaces.missed(AREA, Optional.of(FENDER), 10, List.of()))
                .isCloseTo(Math.pow(1 - one, 10), within(1e-9));
        assertThat(PatchPlaces.missed(AREA, Optional.empty(), 10, scattered(7, 10)))
                .isCloseTo(Math.pow(1 - one, 10), within(1e-9));
        List<ViewPoint> elsewhere = List.of(new ViewPoint(View.TOP, .3, .3), at(900, 300));
        assertThat(PatchPlaces.missed(AREA, Optional.of(FENDER), 2, elsewhere))
                .isCloseTo((1 - one) * (1 - one), within(.0001));
    }

    @Test
    void itIsNeverSaidThatNoPatchCanHide() {
        List<ViewPoint> everywhere = new ArrayList<>();
        for (int x = 300; x <= 1500; x += 40) {
            for (int y = 200; y <= 900; y += 40) {
                everywhere.add(at(x, y));
            }
        }
        assertThat(missed(everywhere)).isEqualTo(PatchPlaces.LEAST_MISSED);
        quarterlight.units.Area coin = new quarterlight.units.Area(500);
        assertThat(PatchPlaces.missed(coin, Optional.empty(), 3, List.of())).isEqualTo(PatchPlaces.LEAST_MISSED);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 4, 10})
    void theNextSpotsFindWhatOthersWouldMiss(int before) {
        List<ViewPoint> places = new ArrayList<>(scattered(20 + before, before));
        for (ViewPoint next : PatchPlaces.next(FENDER, places, 4)) {
            double now = missed(places);
            places.add(next);
            double after = missed(places);
            assertThat(after).as("a whole disc of it").isCloseTo(now - Math.PI * 2500 / AREA.mm2(), within(.0003));
        }
        assertThat(places).hasSize(before + 4);
    }

    /** A rocker, here and there as wide as the patch: its spots spread over its length all the same. */
    @Test
    void onANarrowPanelSpotsSpreadOverItsLength() throws ParseException {
        PanelOutline rocker = new PanelOutline(
                View.LEFT,
                WIDE,
                HIGH,
                new WKTReader().read("POLYGON ((200 700, 1700 700, 1700 795, 900 806, 200 795, 200 700))"));
        List<ViewPoint> asked = PatchPlaces.next(rocker, List.of(), 5);
        assertThat(asked).hasSize(5);
        assertThat(asked.stream().mapToDouble(place -> place.x() * WIDE).min().orElseThrow())
                .isLessThan(350);
        assertThat(asked.stream().mapToDouble(place -> place.x() * WIDE).max().orElseThrow())
                .isGreaterThan(1550);
        assertThat(asked).allMatch(place -> place.y() * HIGH > 715 && place.y() * HIGH < 790);
    }

    @Test
    void whereNothingIsLeftToFindNoMoreSpotsAreAskedFor() throws ParseException {
        PanelOutline strip = new PanelOutline(
                View.LEFT, WIDE, HIGH, new WKTReader().read("POLYGON ((0 0, 180 0, 180 30, 0 30, 0 0))"));
        List<ViewPoint> asked = PatchPlaces.next(strip, List.of(), 9);
        assertThat(asked).hasSizeBetween(2, 4);
        assertThat(asked).allMatch(place -> place.x() * WIDE <= 180 && place.y() * HIGH <= 30);
        assertThat(PatchPlaces.next(strip, asked, 3)).isEmpty();
    }
}
