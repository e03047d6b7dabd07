package quarterlight.finish.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.car.ZoneId;

/** Counts of panels and scores, by hand. */
class CountDistributionTest {
    private static final CountDistribution COIN = new CountDistribution(List.of(0.25, 0.5, 0.25));
    private static final CountDistribution ONE = new CountDistribution(List.of(0.0, 1.0));
    private static final CountDistribution LONG = new CountDistribution(List.of(0.1, 0.2, 0.3, 0.4));

    @Test
    void theMeanIsThatOfTheCounts() {
        assertThat(COIN.mean()).isCloseTo(1, within(1e-12));
        assertThat(LONG.mean()).isCloseTo(0.2 + 0.6 + 1.2, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"0.05, 0", "0.25, 0", "0.2500001, 1", "0.75, 1", "0.76, 2", "1, 2"})
    void aPercentileIsTheLeastCountThatReachesIt(double share, int count) {
        assertThat(COIN.percentile(share)).isEqualTo(count);
    }

    /** Two coins beside one: fewer than one is a quarter, the same a half. */
    @Test
    void twoCarsAreComparedByAllPairsOfCounts() {
        assertThat(COIN.chanceFewerThan(ONE)).isCloseTo(0.25, within(1e-12));
        assertThat(COIN.chanceEqual(ONE)).isCloseTo(0.5, within(1e-12));
        assertThat(ONE.chanceFewerThan(COIN)).isCloseTo(0.25, within(1e-12));
        assertThat(ONE.chanceFewerThan(LONG)).isCloseTo(0.7, within(1e-12));
        assertThat(LONG.chanceFewerThan(ONE)).isCloseTo(0.1, within(1e-12));
        assertThat(LONG.chanceEqual(COIN)).isCloseTo(0.025 + 0.1 + 0.075, within(1e-12));
        assertThat(COIN.chanceEqual(LONG)).isCloseTo(0.2, within(1e-12));
    }

    @Test
    void theChancesOfAllCountsSumToOne() {
        assertThatThrownBy(() -> new CountDistribution(List.of())).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new CountDistribution(List.of(0.5, 0.4))).isInstanceOf(IllegalArgumentException.class);
        assertThat(new CountDistribution(List.of(0.5, 0.5 + 9e-7)).mean()).isPositive();
        assertThatThrownBy(() -> new CountDistribution(List.of(0.5, 0.5 + 2e-6)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static ZoneHistory zone(double over, double stripped, double filler) {
        return new ZoneHistory(
                new ZoneId("hood"),
                true,
                new Chances(1 - over - stripped - filler, over, stripped, filler),
                0,
                0.004,
                0.996,
                0,
                0,
                List.of(),
                List.of(),
                Map.of(),
                Optional.empty());
    }

    /** Scores are whole numbers, rounded half up; people read "under 1" and "over 99" for 0 and 100. */
    @Test
    void scoresAreRoundedHalfUpAndNeverReadAsCertain() {
        assertThat(zone(0.25, 0.125, 0.125).refinishScore()).isEqualTo(50);
        assertThat(zone(0.25, 0.125, 0.125).repairScore()).isEqualTo(13);
        assertThat(zone(0, 0, 0.124).repairScore()).isEqualTo(12);
        assertThat(zone(0.25, 0.125, 0.125).shownBand()).isEqualTo("under 1 to over 99");
        assertThat(ZoneHistory.shownBand(.9951, .9999)).isEqualTo("over 99");
        assertThat(ZoneHistory.shownBand(.9949, .9999)).isEqualTo("99 to over 99");
        assertThat(ZoneHistory.shown(0)).isEqualTo("under 1");
        assertThat(ZoneHistory.shown(1)).isEqualTo("1");
        assertThat(ZoneHistory.shown(99)).isEqualTo("99");
        assertThat(ZoneHistory.shown(100)).isEqualTo("over 99");
        assertThat(ZoneHistory.shown(0.005)).isEqualTo("1");
        assertThat(ZoneHistory.shown(0.0049)).isEqualTo("under 1");
    }

    @Test
    void chancesAreFiniteAndNotBelowZero() {
        Chances chances = new Chances(0.1, 0.2, 0.3, 0.4);
        assertThat(chances.sum()).isCloseTo(1, within(1e-12));
        assertThat(chances.of(History.FACTORY)).isEqualTo(0.1);
        assertThat(chances.of(History.OVER)).isEqualTo(0.2);
        assertThat(chances.of(History.STRIPPED)).isEqualTo(0.3);
        assertThat(chances.of(History.FILLER)).isEqualTo(0.4);
        assertThat(new Chances(0, 0, 0, 0).sum()).isZero();
        for (double wrong : new double[] {-1e-9, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> new Chances(0.1, wrong, 0.3, 0.4)).isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void aReasonNamesASignIfAndOnlyIfItIsOne() {
        assertThatThrownBy(() -> new FinishReason(FinishReason.Source.SIGN, Optional.empty(), true, 0, 0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new FinishReason(
                        FinishReason.Source.VALUES, Optional.of(quarterlight.visit.trial.SignKind.RIPPLE), true, 0, 0))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
