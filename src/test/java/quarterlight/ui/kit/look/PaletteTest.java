package quarterlight.ui.kit.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.util.List;
import org.junit.jupiter.api.Test;
import quarterlight.diagram.ink.InkPalette;

/** Contrast by WCAG 2.2, relative luminance and contrast ratio as published by the W3C. */
class PaletteTest {
    @Test
    void everyTextColorStandsOutFromPaperAndSheet() {
        for (Palette p : List.of(Palette.LIGHT, Palette.DARK)) {
            for (Color ground : List.of(p.paper(), p.sheet())) {
                for (Color text : List.of(p.ink(), p.secondInk(), p.accent(), p.caution(), p.grave())) {
                    assertThat(contrast(text, ground))
                            .as("%s on %s", text, ground)
                            .isGreaterThanOrEqualTo(4.5);
                }
            }
            assertThat(contrast(p.onAccent(), p.accent())).isGreaterThanOrEqualTo(4.5);
        }
    }

    /** Enhanced contrast of WCAG 2.2 (1.4.6) for text, and 3:1 (1.4.11) for lines that tell parts of the window apart. */
    @Test
    void strongContrastIsEnhancedContrast() {
        for (Palette p : List.of(Palette.LIGHT_CONTRAST, Palette.DARK_CONTRAST)) {
            for (Color text : List.of(p.ink(), p.secondInk(), p.accent(), p.caution(), p.grave())) {
                assertThat(contrast(text, p.paper())).as("%s", text).isGreaterThanOrEqualTo(7);
                assertThat(contrast(text, p.sheet())).as("%s", text).isGreaterThanOrEqualTo(7);
            }
            assertThat(contrast(p.onAccent(), p.accent())).isGreaterThanOrEqualTo(7);
            assertThat(contrast(p.line(), p.paper())).isGreaterThanOrEqualTo(3);
        }
        assertThat(contrast(Palette.LIGHT.line(), Palette.LIGHT.paper()))
                .as("the usual hairline is fainter")
                .isLessThan(3);
    }

    /** Strong contrast holds in the drawing too: its lines stand out as words do (WCAG 2.2, 1.4.6 and 1.4.3 for the finest). */
    @Test
    void theDrawingFollowsTheContrastOfTheWindow() {
        assertThat(Palette.LIGHT.drawing()).isEqualTo(InkPalette.LIGHT);
        assertThat(Palette.DARK.drawing()).isEqualTo(InkPalette.DARK);
        for (Palette p : List.of(Palette.LIGHT_CONTRAST, Palette.DARK_CONTRAST)) {
            InkPalette drawing = p.drawing();
            assertThat(contrast(drawing.ink(), drawing.ground())).isGreaterThanOrEqualTo(7);
            assertThat(contrast(drawing.gap(), drawing.ground())).isGreaterThanOrEqualTo(7);
            assertThat(contrast(drawing.secondInk(), drawing.ground())).isGreaterThanOrEqualTo(7);
            assertThat(contrast(drawing.detail(), drawing.ground())).isGreaterThanOrEqualTo(4.5);
        }
        assertThat(contrast(InkPalette.LIGHT.detail(), InkPalette.LIGHT.ground()))
                .as("the usual detail is fainter")
                .isLessThan(4.5);
    }

    @Test
    void contrastAgreesWithPublishedPairs() {
        assertThat(contrast(new Color(0x767676), Color.WHITE)).isBetween(4.542, 4.543);
        assertThat(contrast(new Color(0x00224e), Color.WHITE)).isBetween(15.685, 15.686);
    }

    private static double contrast(Color a, Color b) {
        double la = luminance(a);
        double lb = luminance(b);
        return (Math.max(la, lb) + 0.05) / (Math.min(la, lb) + 0.05);
    }

    private static double luminance(Color c) {
        return 0.2126 * linear(c.getRed()) + 0.7152 * linear(c.getGreen()) + 0.0722 * linear(c.getBlue());
    }

    private static double linear(int channel) {
        double c = channel / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }
}
