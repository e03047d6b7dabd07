package quarterlight.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import quarterlight.car.ZoneId;

class CalibrationTest {
    private static final WalkTraits USUAL = new WalkTraits(0.28, 0.05, 0.02, 0.15, 0.02, 0.01, 0.15);
    private static final WalkTraits SCATTERED = new WalkTraits(0.2, 0.05, 0.02, 0.3, 0.1, 0.5, 0.1);

    @Test
    void onAUsualWalkItLeavesWhatIsSaidNearlyAsItIs() {
        for (double said = 0.1; said < 0.95; said += 0.1) {
            assertThat(Calibration.chance(said, USUAL)).isCloseTo(said, within(0.06));
        }
    }

    @Test
    void longStopsOfAScatteredWalkAreSurerThanSaid() {
        assertThat(Calibration.chance(0.55, SCATTERED)).isBetween(0.6, 0.75);
    }

    @Test
    void theSurerIsSaidTheSurerItIs() {
        for (WalkTraits walk : List.of(USUAL, SCATTERED)) {
            for (double said = 0.05; said < 0.9; said += 0.05) {
                assertThat(Calibration.chance(said + 0.05, walk)).isGreaterThan(Calibration.chance(said, walk));
            }
        }
    }

    @Test
    void theOrderAndTheSumStay() {
        List<Suggestion> said = List.of(suggestion("hood", 0.41), suggestion("roof", 0.40), suggestion("cowl", 0.1));
        for (WalkTraits walk : List.of(USUAL, SCATTERED)) {
            List<Suggestion> now = Calibration.calibrated(said, walk);
            assertThat(now).extracting(Suggestion::zone).containsExactlyElementsOf(zones(said));
            assertThat(now.get(0).p()).isGreaterThanOrEqualTo(now.get(1).p() - 1e-12);
            assertThat(now.get(1).p() / now.get(2).p()).isCloseTo(4, within(1e-9));
            double rest = now.get(1).p() + now.get(2).p();
            assertThat(now.get(0).p() + rest * 0.59 / 0.5).isCloseTo(1, within(1e-9));
        }
    }

    /** Where earlier visits are known, words made what was said far too sure (docs/performance.md); without words it stays nearly as it is. */
    @Test
    void ofOneWhoseVisitsAreKnownAWordMakesItLessSure() {
        List<Suggestion> said = List.of(suggestion("hood", 0.9), suggestion("roof", 0.06), suggestion("cowl", 0.04));
        Calibration.Talk silent = new Calibration.Talk(0, 0, 0);
        Calibration.Talk spoken = new Calibration.Talk(0.6, 1, 0);

        List<Suggestion> quiet = Calibration.calibratedOfKnown(said, USUAL, silent);
        List<Suggestion> heard = Calibration.calibratedOfKnown(said, USUAL, spoken);

        assertThat(quiet.get(0).p()).isBetween(0.84, 0.9);
        assertThat(heard.get(0).p()).isBetween(0.6, 0.75);
        assertThat(heard).extracting(Suggestion::zone).containsExactlyElementsOf(zones(said));
        assertThat(heard.get(1).p() / heard.get(2).p()).isCloseTo(1.5, within(1e-9));
    }

    private static List<ZoneId> zones(List<Suggestion> suggestions) {
        return suggestions.stream().map(Suggestion::zone).toList();
    }

    private static Suggestion suggestion(String zone, double p) {
        return new Suggestion(new ZoneId(zone), p);
    }
}
