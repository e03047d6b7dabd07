package quarterlight.walk.said;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.car.ZoneId;
import quarterlight.walk.ZoneKin;

/** How much a place that was said counts, worked out by hand from the rule in docs/methods/zone-suggestion.md. */
class SaidPlacesTest {
    private static final ZoneId LEFT = new ZoneId("door-left");
    private static final ZoneId RIGHT = new ZoneId("door-right");
    private static final ZoneId HOOD = new ZoneId("hood");
    private static final ZoneId ROOF = new ZoneId("roof");
    private static final List<ZoneId> ZONES = List.of(LEFT, RIGHT, HOOD, ROOF);
    private static final ZoneKin KIN = new ZoneKin(Map.of(LEFT, RIGHT, RIGHT, LEFT), Map.of());
    private static final double[] SILENT = {1, 1, 1, 1};
    private static final Offset<Double> EXACT = within(1e-12);

    private static PlaceSaid said(double seconds, double weight, ZoneId... zones) {
        return new PlaceSaid(seconds, List.of(zones), weight);
    }

    private static SaidPlaces places(double[] moments, PlaceSaid... said) {
        return new SaidPlaces(ZONES, KIN, List.of(said), moments);
    }

    /** Seven in ten are right, of four zones; one in ten of these is about the other side. */
    @Test
    void sevenInTenAreRightAndATenthOfTheseIsAboutTheOtherSide() {
        SaidPlaces places = places(new double[] {0}, said(0, 1, LEFT));
        assertThat(places.at(0, SILENT)).containsExactly(new double[] {1 + 2.8 * 0.9, 1 + 2.8 * 0.1, 1, 1}, EXACT);
        assertThat(places.isEmpty()).isFalse();
        assertThat(places.moments()).isEqualTo(1);
    }

    @Test
    void whereThereIsNoOtherSideThatTenthCountsForNothing() {
        assertThat(places(new double[] {0}, said(0, 1, HOOD)).at(0, SILENT))
                .containsExactly(new double[] {1, 1, 1 + 2.8 * 0.9, 1}, EXACT);
    }

    @Test
    void severalZonesShareItAndBothSidesAreNoSlip() {
        assertThat(places(new double[] {0}, said(0, 1, LEFT, RIGHT)).at(0, SILENT))
                .containsExactly(new double[] {1 + 1.4 * 0.9, 1 + 1.4 * 0.9, 1, 1}, EXACT);
        assertThat(places(new double[] {0}, said(0, 0.5, HOOD)).at(0, SILENT))
                .containsExactly(new double[] {1, 1, 1 + 1.4 * 0.9, 1}, EXACT);
    }

    @Test
    void withinTenSecondsItFallsToAThirdBeforeAndAfter() {
        for (double at : new double[] {-10, 10}) {
            assertThat(places(new double[] {0}, said(at, 1, HOOD)).at(0, SILENT))
                    .containsExactly(new double[] {1, 1, 1 + 2.8 * 0.9 * Math.exp(-1), 1}, EXACT);
        }
    }

    @Test
    void twoPhotosBeforeAndTwoAfterShareItTheNearerTheMore() {
        double[] moments = {0, 10, 20, 30, 40, 50};
        SaidPlaces places = places(moments, said(26, 1, HOOD));
        double[] near = {Math.exp(-1.6), Math.exp(-0.6), Math.exp(-0.4), Math.exp(-1.4)};
        double all = near[0] + near[1] + near[2] + near[3];
        for (int t = 1; t <= 4; t++) {
            assertThat(places.at(t, SILENT)[2]).isCloseTo(1 + 2.8 * 0.9 * near[2] * near[t - 1] / all, EXACT);
        }
        assertThat(places.at(0, SILENT)).isSameAs(SILENT);
        assertThat(places.at(5, SILENT)).isSameAs(SILENT);
        assertThat(places.moments()).isEqualTo(4);
    }

    @Test
    void atTheMomentOfAPhotoThatPhotoIsAmongThoseAfterIt() {
        SaidPlaces places = places(new double[] {0, 1, 2, 3, 4}, said(2, 1, HOOD));
        assertThat(places.at(4, SILENT)).isSameAs(SILENT);
        assertThat(places.at(0, SILENT)[2]).isGreaterThan(1);
        assertThat(places.at(3, SILENT)[2]).isGreaterThan(1);
    }

    /** A hundredth of it, 46.05 s away, is the least that counts. */
    @ParameterizedTest
    @CsvSource({"46.0, false", "46.1, true"})
    void fartherThanAHundredthItSaysNothing(double seconds, boolean silent) {
        SaidPlaces places = places(new double[] {0}, said(seconds, 1, HOOD));
        assertThat(places.isEmpty()).isEqualTo(silent);
        assertThat(places.at(0, SILENT) == SILENT).isEqualTo(silent);
    }

    @Test
    void twoWordsAddUpAndAZoneThatTheCarLacksSaysNothing() {
        assertThat(places(new double[] {0}, said(0, 1, HOOD), said(0, 0.5, HOOD))
                        .at(0, SILENT))
                .containsExactly(new double[] {1, 1, 1 + (2.8 + 1.4) * 0.9, 1}, EXACT);
        assertThat(places(new double[] {0}, said(0, 1, new ZoneId("cargo-floor")))
                        .isEmpty())
                .isTrue();
        assertThat(places(new double[] {}, said(0, 1, HOOD)).isEmpty()).isTrue();
    }

    @Test
    void aPlaceSaidHasATimeZonesAndAWeightOfAtMostOne() {
        assertThat(said(0, 1, HOOD).weight()).isEqualTo(1);
        for (double weight : new double[] {0, -0.1, 1.0001, Double.NaN}) {
            assertThatThrownBy(() -> said(0, weight, HOOD)).isInstanceOf(IllegalArgumentException.class);
        }
        assertThatThrownBy(() -> said(Double.NaN, 1, HOOD)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> said(0, 1)).isInstanceOf(IllegalArgumentException.class);
    }
}
