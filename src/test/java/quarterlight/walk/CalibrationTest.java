package quarterlight.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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

    /** The fitted weights that docs/methods/zone-suggestion.md prints: on the log odds, and on how much of what is said counts. */
    @ParameterizedTest
    @CsvSource({
        "0, 0, 0, 0, 0, 0, 0, 0.12, 0.82",
        "0.1, 0, 0, 0, 0, 0, 0, 0.28, 0.79",
        "0, 0.5, 0, 0, 0, 0, 0, 0.225, 0.945",
        "0, 0, 0.5, 0, 0, 0, 0, 0.325, 0.82",
        "0, 0, 0, 0.5, 0, 0, 0, -0.045, 1.06",
        "0, 0, 0, 0, 0.5, 0, 0, -0.12, 0.82",
        "0, 0, 0, 0, 0, 0.5, 0, 0.3, 1.095",
        "0, 0, 0, 0, 0, 0, 0.5, -0.395, 0.82",
        "0.1, 0, 0, 0.5, 0, 0, 0, -0.47, 1.03",
        "0.1, 0, 0, 0, 0, 0.5, 0, 0.245, 1.065",
    })
    void theLogOddsAreBroughtByTheFittedWeights(
            double pace,
            double heavy,
            double bursts,
            double anywhere,
            double mirror,
            double kind,
            double over,
            double level,
            double slope) {
        WalkTraits walk = new WalkTraits(0.25 + pace, heavy, bursts, anywhere, mirror, kind, over);
        for (double odds : new double[] {-2, 0, 1}) {
            double chance = Calibration.chance(1 / (1 + Math.exp(-odds)), walk);
            assertThat(Math.log(chance / (1 - chance))).isCloseTo(level + slope * odds, within(1e-9));
        }
    }

    @Test
    void whatIsSaidCountsAsOneOfAHundredAtLeast() {
        assertThat(Calibration.chance(0, USUAL)).isEqualTo(Calibration.chance(0.01, USUAL));
        assertThat(Calibration.chance(1, USUAL)).isEqualTo(Calibration.chance(0.99, USUAL));
        assertThat(Calibration.chance(0.02, USUAL)).isGreaterThan(Calibration.chance(0.01, USUAL));
    }

    @Test
    void aLoneSuggestionStaysAndTheFirstStaysFirst() {
        List<Suggestion> one = List.of(suggestion("hood", 0.41));
        Calibration.Talk silent = new Calibration.Talk(0, 0, 0);
        assertThat(Calibration.calibrated(one, USUAL)).isEqualTo(one);
        assertThat(Calibration.calibrated(one, USUAL, silent)).isEqualTo(one);
        List<Suggestion> two = List.of(suggestion("hood", 0.31), suggestion("roof", 0.3));
        assertThat(Calibration.calibrated(two, USUAL).get(0).p())
                .isCloseTo(Math.max(Calibration.chance(0.31, USUAL), 0.3 / 0.99), within(1e-12));
        assertThat(Calibration.calibrated(two, USUAL, silent).get(0).p())
                .isCloseTo(Math.max(Calibration.chance(0.31, USUAL, silent), 0.3 / 0.99), within(1e-12));
    }

    /** What is weighed where words were said: each ground once, products with the log odds. */
    @Test
    void theGroundsOfAWalkWithWordsAreItsTraitsAndTheirProducts() {
        WalkTraits walk = new WalkTraits(0.35, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7);
        double[] grounds = Calibration.grounds(1 / (1 + Math.exp(-2)), walk, new Calibration.Talk(0.8, 1, 0.9));
        double[] wanted = {
            1, 2, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.04, 0.06, 0.2, 0.4, 0.8, 1.2, 0.8, 1.6, 1, 0.9, 1.8
        };
        assertThat(grounds).containsExactly(wanted, within(1e-9));
    }

    private static List<ZoneId> zones(List<Suggestion> suggestions) {
        return suggestions.stream().map(Suggestion::zone).toList();
    }

    private static Suggestion suggestion(String zone, double p) {
        return new Suggestion(new ZoneId(zone), p);
    }
}
