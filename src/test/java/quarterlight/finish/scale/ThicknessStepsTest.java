package quarterlight.finish.scale;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import quarterlight.car.FinishProfile;

class ThicknessStepsTest {
    /** A car of 5 mil in lacquer: 4 to 6.25 mil is its middle, worked out by hand. */
    @ParameterizedTest
    @CsvSource({
        "2.99, -2",
        "3.01, -1",
        "3.99, -1",
        "4.01, 0",
        "5, 0",
        "6.24, 0",
        "6.26, 1",
        "7.99, 1",
        "8.01, 2",
        "12.4, 2",
        "12.6, 3",
        "24.9, 3",
        "25.1, 4",
        "200, 4",
    })
    void aCarOfFiveMilInLacquer(double mil, int step) {
        ThicknessSteps steps = ThicknessSteps.of(5 * 25.4, FactoryRange.of(FinishProfile.LACQUER));
        assertThat(steps.of(mil * 25.4)).isEqualTo(step);
    }

    @Test
    void aThinOriginalCarWidensTheMiddleDownwardAndAThickOneUpward() {
        FactoryRange lacquer = FactoryRange.of(FinishProfile.LACQUER);
        ThicknessSteps thin = ThicknessSteps.of(2 * 25.4, lacquer);
        assertThat(thin.soundFromUm()).isCloseTo(1.6 * 25.4, within(1e-9));
        assertThat(thin.soundToUm()).isCloseTo(6 * 25.4, within(1e-9));
        ThicknessSteps thick = ThicknessSteps.of(9 * 25.4, lacquer);
        assertThat(thick.soundFromUm()).isCloseTo(4 * 25.4, within(1e-9));
        assertThat(thick.soundToUm()).isCloseTo(11.25 * 25.4, within(1e-9));
    }

    @Test
    void beforeTheLevelIsWorkedOutSoundPanelsSetItAndThickOnesDoNot() {
        double[] mostlyRepainted = {4.4 * 25.4, 4.6 * 25.4, 4.9 * 25.4, 14 * 25.4, 15 * 25.4, 22 * 25.4, 30 * 25.4};
        assertThat(ThicknessSteps.beforeJudging(FinishProfile.LACQUER, mostlyRepainted))
                .isEqualTo(ThicknessSteps.of(4.6 * 25.4, FactoryRange.of(FinishProfile.LACQUER)));
        assertThat(ThicknessSteps.beforeJudging(FinishProfile.ENAMEL, new double[] {20 * 25.4}))
                .as("none reads as a factory finish can")
                .isEqualTo(ThicknessSteps.beforeJudging(FinishProfile.ENAMEL, new double[0]));
    }

    @ParameterizedTest
    @EnumSource(FinishProfile.class)
    void theOwnLevelAndTheFactoryRangeAreAlwaysTheMiddle(FinishProfile profile) {
        FactoryRange factory = FactoryRange.of(profile);
        for (double mil = 0.5; mil < 30; mil += 0.25) {
            ThicknessSteps steps = ThicknessSteps.of(mil * 25.4, factory);
            assertThat(steps.of(mil * 25.4)).isZero();
            assertThat(steps.of(factory.lowUm())).isZero();
            assertThat(steps.of(factory.highUm())).isZero();
            assertThat(steps.of(1e-3)).isEqualTo(ThicknessSteps.LOWEST);
            assertThat(steps.of(1e6)).isEqualTo(ThicknessSteps.HIGHEST);
        }
    }

    /** The leaflet on total paint thickness of 11 March 2025 names 80 to 130 um. */
    @Test
    void theModernRangeIsThePublishedOne() {
        assertThat(FactoryRange.of(FinishProfile.MODERN)).isEqualTo(new FactoryRange(80, 130));
    }

    @Test
    void limitsRise() {
        assertThatThrownBy(() -> new ThicknessSteps(List.of(1.0, 2.0, 3.0, 3.0, 5.0, 6.0)))
                .hasMessageContaining("rise");
        assertThatThrownBy(() -> new ThicknessSteps(List.of(1.0, 2.0))).hasMessageContaining("six");
        assertThatThrownBy(() -> new FactoryRange(5, 5)).hasMessageContaining("upward");
    }
}
