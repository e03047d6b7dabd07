package quarterlight.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** 1 mil is 25.4 um exactly, since 1 in is 25.4 mm exactly (NIST SP 811, from memory). */
class UnitsTest {
    @Test
    void aMilIsTwentyFivePointFourMicrometers() {
        assertThat(Thickness.of(5, ThicknessUnit.MIL).um()).isCloseTo(127, within(1e-12));
        assertThat(Thickness.of(5, ThicknessUnit.UM).um()).isEqualTo(5);
        assertThat(new Thickness(127).mils()).isCloseTo(5, within(1e-12));
        assertThat(new Thickness(127).in(ThicknessUnit.UM)).isEqualTo(127);
    }

    @ParameterizedTest
    @CsvSource({"mil,MIL", "mils,MIL", " Thou ,MIL", "um,UM", "\u00b5m,UM", "\u03bcm,UM", "MICRONS,UM"})
    void unitsAreReadAsPeopleWriteThem(String word, ThicknessUnit unit) {
        assertThat(ThicknessUnit.said(word)).contains(unit);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "mm", "mil s", "in"})
    void otherWordsAreNoUnit(String word) {
        assertThat(ThicknessUnit.said(word)).isEmpty();
    }

    @Test
    void thicknessesAndAreasAreOrdered() {
        assertThat(new Thickness(1)).isLessThan(new Thickness(2)).isEqualByComparingTo(new Thickness(1));
        assertThat(new Area(2)).isGreaterThan(new Area(1)).isEqualByComparingTo(new Area(2));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void whatIsNotFiniteIsRefused(double value) {
        assertThatThrownBy(() -> new Thickness(value)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Area(value)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void anAreaMayBeNothingButNotLess() {
        assertThat(new Area(0).mm2()).isZero();
        assertThatThrownBy(() -> new Area(-1e-9)).isInstanceOf(IllegalArgumentException.class);
    }

    private enum Weather implements Worded {
        FINE,
        LIGHT_RAIN
    }

    @Test
    void aWordIsTheNameInLowerCaseWithHyphens() {
        assertThat(Weather.LIGHT_RAIN.word()).isEqualTo("light-rain");
        assertThat(Worded.find(Weather.class, " Light-Rain ")).contains(Weather.LIGHT_RAIN);
        assertThat(Worded.find(Weather.class, "snow")).isEmpty();
        assertThat(Worded.words(Weather.class)).isEqualTo("fine, light-rain");
        assertThat(Worded.list(Weather.class)).containsExactly("fine", "light-rain");
    }
}
