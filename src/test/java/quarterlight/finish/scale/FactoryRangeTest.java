package quarterlight.finish.scale;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.car.FinishProfile;

/** Published figures: series finish 80 to 130 um (leaflet of 11 March 2025); polished 4 to 6 mil, collector cars to 8 (W. C. Anderson, 2010). */
class FactoryRangeTest {
    @ParameterizedTest
    @CsvSource({"LACQUER, 101.6, 152.4", "ENAMEL, 101.6, 203.2", "MODERN, 80, 130", "UNKNOWN, 80, 152.4"})
    void rangesAreThosePublished(FinishProfile profile, double low, double high) {
        assertThat(FactoryRange.of(profile).lowUm()).isCloseTo(low, within(1e-9));
        assertThat(FactoryRange.of(profile).highUm()).isCloseTo(high, within(1e-9));
    }

    @Test
    void aRangeRunsUpwardFromAboveZero() {
        assertThatThrownBy(() -> new FactoryRange(0, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new FactoryRange(1, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThat(new FactoryRange(1, 1.1).highUm()).isEqualTo(1.1);
    }
}
