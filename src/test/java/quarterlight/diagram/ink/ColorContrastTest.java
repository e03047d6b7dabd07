package quarterlight.diagram.ink;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against ratios calculated apart from this program by the formula of WCAG 2.2; the first two agree with a published library. */
class ColorContrastTest {
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
        assertThat(ColorContrast.ratio(Color.decode(a), Color.decode(b))).isCloseTo(ratio, within(0.00005));
        assertThat(ColorContrast.ratio(Color.decode(b), Color.decode(a))).isCloseTo(ratio, within(0.00005));
    }

    @Test
    void ratiosAreShownRoundedDown() {
        assertThat(ColorContrast.shown(4.4781)).isEqualTo(4.47);
        assertThat(ColorContrast.shown(4.4999)).isEqualTo(4.49);
    }

    @Test
    void aNumberOnEveryStepOfTheRampCanBeReadInBothPalettes() {
        for (InkPalette palette : new InkPalette[] {InkPalette.LIGHT, InkPalette.DARK}) {
            SceneColors colors = new SceneColors(palette, Ramp.load());
            for (Color step : colors.ramp().steps(palette)) {
                assertThat(ColorContrast.ratio(colors.textOn(step), step)).isGreaterThanOrEqualTo(4.5);
            }
        }
    }

    @Test
    void wordsOfThePalettesCanBeReadOnTheirGround() {
        for (InkPalette palette : new InkPalette[] {InkPalette.LIGHT, InkPalette.DARK}) {
            assertThat(ColorContrast.ratio(palette.ink(), palette.ground())).isGreaterThanOrEqualTo(4.5);
            assertThat(ColorContrast.ratio(palette.secondInk(), palette.ground()))
                    .isGreaterThanOrEqualTo(4.5);
            assertThat(ColorContrast.ratio(palette.accent(), palette.ground())).isGreaterThanOrEqualTo(4.5);
        }
    }

    /** The classes of PuOr as published by ColorBrewer, eleven classes. */
    private static final List<String> PUBLISHED = List.of(
            "#7f3b08", "#b35806", "#e08214", "#fdb863", "#fee0b6", "#f7f7f7", "#d8daeb", "#b2abd2", "#8073ac",
            "#542788", "#2d004b");

    @Test
    void theStepsAreThePublishedColors() {
        assertThat(Ramp.load().steps(InkPalette.LIGHT)).hasSize(7).allMatch(ColorContrastTest::isPublished);
        assertThat(Ramp.load().steps(InkPalette.DARK))
                .hasSize(7)
                .filteredOn(ColorContrastTest::isPublished)
                .hasSize(6);
    }

    private static boolean isPublished(Color color) {
        return PUBLISHED.contains(String.format("#%06x", color.getRGB() & 0xFFFFFF));
    }

    @Test
    void theMiddleIsThePaperAndBothEndsLeaveItInEvenAPrintWithoutColor() {
        for (InkPalette palette : new InkPalette[] {InkPalette.LIGHT, InkPalette.DARK}) {
            List<Color> steps = Ramp.load().steps(palette);
            assertThat(ColorContrast.ratio(steps.get(2), palette.ground())).isLessThan(1.15);
            for (int i = 2; i < 6; i++) {
                assertThat(away(steps.get(i + 1), palette)).isGreaterThan(1.15 * away(steps.get(i), palette));
            }
            for (int i = 2; i > 0; i--) {
                assertThat(away(steps.get(i - 1), palette)).isGreaterThan(1.15 * away(steps.get(i), palette));
            }
        }
    }

    private static double away(Color color, InkPalette palette) {
        return ColorContrast.ratio(color, palette.ground());
    }
}
