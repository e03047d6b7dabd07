package quarterlight.diagram.ink;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against ratios calculated apart from this program by the formula of WCAG 2.2; the first two agree with a published library. */
class ContrastTest {
    @ParameterizedTest
    @CsvSource({
        "#777777, #ffffff, 4.4781",
        "#767676, #ffffff, 4.5422",
        "#000000, #ffffff, 21",
        "#ff0000, #ffffff, 3.9985",
        "#0000ff, #ffffff, 8.5925",
        "#949494, #ffffff, 3.0335",
        "#959595, #ffffff, 2.9953",
        "#595959, #ffffff, 7.0047",
        "#00224e, #ffffff, 15.6854",
        "#fee838, #000000, 16.8139",
        "#fee838, #ffffff, 1.2490",
    })
    void ratiosAreThePublishedOnes(String a, String b, double ratio) {
        assertThat(Contrast.ratio(Color.decode(a), Color.decode(b))).isCloseTo(ratio, within(0.00005));
        assertThat(Contrast.ratio(Color.decode(b), Color.decode(a))).isCloseTo(ratio, within(0.00005));
    }

    @Test
    void ratiosAreShownRoundedDown() {
        assertThat(Contrast.shown(4.4781)).isEqualTo(4.47);
        assertThat(Contrast.shown(4.4999)).isEqualTo(4.49);
    }

    @Test
    void aNumberOnEveryStepOfTheRampCanBeReadInBothPalettes() {
        for (InkPalette palette : new InkPalette[] {InkPalette.LIGHT, InkPalette.DARK}) {
            SceneColors colors = new SceneColors(palette, Ramp.load());
            for (Color step : colors.ramp().steps()) {
                assertThat(Contrast.ratio(colors.textOn(step), step)).isGreaterThanOrEqualTo(4.5);
            }
        }
    }

    @Test
    void wordsOfThePalettesCanBeReadOnTheirGround() {
        for (InkPalette palette : new InkPalette[] {InkPalette.LIGHT, InkPalette.DARK}) {
            assertThat(Contrast.ratio(palette.ink(), palette.ground())).isGreaterThanOrEqualTo(4.5);
            assertThat(Contrast.ratio(palette.secondInk(), palette.ground())).isGreaterThanOrEqualTo(4.5);
            assertThat(Contrast.ratio(palette.accent(), palette.ground())).isGreaterThanOrEqualTo(4.5);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "0, #00224e",
        "32, #1a386f",
        "64, #434e6c",
        "96, #61656f",
        "128, #7d7c78",
        "160, #9b9476",
        "192, #bcae6c",
        "224, #dec958",
        "255, #fee838"
    })
    void theRampIsCividisFromLightToDark(int index, String color) {
        assertThat(Ramp.load().at(1 - index / 255.0)).isEqualTo(Color.decode(color));
        assertThat(Ramp.load().steps()).hasSize(256);
    }

    @Test
    void theRampRisesInLuminanceSoThatAPrintWithoutColorKeepsTheOrder() {
        double before = -1;
        for (Color step : Ramp.load().steps()) {
            double luminance = Contrast.luminance(step);
            assertThat(luminance).isGreaterThan(before - 0.002);
            before = luminance;
        }
    }
}
