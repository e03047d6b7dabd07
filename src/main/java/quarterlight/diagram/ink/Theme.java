package quarterlight.diagram.ink;

import java.awt.Color;
import java.util.Map;

/**
 * All colors of window and pages in one brightness: those of drawings, and what lies around them. The one place where they are written down; the
 * window's for strong contrast stand beside it.
 *
 * @param drawing the drawing, text and lines; its ground is that of sheets, tables and photos
 * @param paper what lies around sheets
 * @param caution cautions only
 */
public record Theme(InkPalette drawing, Color paper, Color caution) {
    public static final Theme LIGHT = new Theme(InkPalette.LIGHT, new Color(0xF6F4EF), new Color(0x8F4A00));
    public static final Theme DARK = new Theme(InkPalette.DARK, new Color(0x1C2023), new Color(0xE6A650));

    /** The colors by name, as pages and styles write them. */
    public Map<String, String> byName() {
        return Map.of(
                "paper", InkPalette.hex(paper),
                "sheet", InkPalette.hex(drawing.ground()),
                "ink", InkPalette.hex(drawing.ink()),
                "second", InkPalette.hex(drawing.secondInk()),
                "line", InkPalette.hex(drawing.line()),
                "accent", InkPalette.hex(drawing.accent()),
                "grave", InkPalette.hex(drawing.grave()),
                "caution", InkPalette.hex(caution));
    }
}
