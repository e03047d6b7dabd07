package quarterlight.ui.kit.look;

import java.awt.Color;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.diagram.ink.Theme;

/**
 * The colors of the window in one brightness. Contrast of text on paper and sheet is 4.5:1 or better.
 *
 * @param paper window
 * @param sheet tables, cards, surround of photos
 * @param ink text and drawing
 * @param secondInk labels and units
 * @param line hairlines
 * @param accent selection, focus, links, pins
 * @param caution cautions only
 * @param grave a structural hole, a changed original
 */
public record Palette(
        boolean dark,
        Color paper,
        Color sheet,
        Color ink,
        Color secondInk,
        Color line,
        Color accent,
        Color caution,
        Color grave) {
    public static final Palette LIGHT = of(false, Theme.LIGHT);
    public static final Palette DARK = of(true, Theme.DARK);

    /** The window beside its diagram: sheet, ink, lines and accent are those of the drawing. */
    private static Palette of(boolean dark, Theme theme) {
        InkPalette drawing = theme.drawing();
        return new Palette(
                dark,
                theme.paper(),
                drawing.ground(),
                drawing.ink(),
                drawing.secondInk(),
                drawing.line(),
                drawing.accent(),
                theme.caution(),
                drawing.grave());
    }

    /** For eyes that need strong contrast: black on white, no gray words, lines as dark as words. */
    public static final Palette LIGHT_CONTRAST = new Palette(
            false,
            new Color(0xFFFFFF),
            new Color(0xFFFFFF),
            new Color(0x000000),
            new Color(0x20262B),
            new Color(0x20262B),
            new Color(0x003F4A),
            new Color(0x5C2F00),
            new Color(0x7A0019));

    public static final Palette DARK_CONTRAST = new Palette(
            true,
            new Color(0x000000),
            new Color(0x000000),
            new Color(0xFFFFFF),
            new Color(0xE4E1DA),
            new Color(0xE4E1DA),
            new Color(0x8FE9F5),
            new Color(0xFFC880),
            new Color(0xFFB3BF));

    /** What the diagram and all that is drawn as it is are drawn with. */
    public InkPalette drawing() {
        return new InkPalette(sheet, ink, secondInk, line, accent, grave);
    }

    /** The text color that stands on the accent. */
    public Color onAccent() {
        return dark ? paper : sheet;
    }

    /** A color mixed into another: {@code share} 0 gives the ground, 1 the color. */
    public static Color mix(Color ground, Color color, double share) {
        return InkPalette.mix(color, ground, share);
    }
}
