package quarterlight.page.photo;

import java.awt.Color;
import java.awt.Font;
import java.util.Objects;
import quarterlight.diagram.ink.InkPalette;

/**
 * The colors and the typeface of notes on photos.
 *
 * @param line strokes and arrow heads
 * @param halo what surrounds every stroke, so that it stands out on any picture; far from {@code line} in lightness
 * @param plate what the words stand on
 * @param text the words
 * @param font their typeface, of any size
 */
public record NoteInk(Color line, Color halo, Color plate, Color text, Font font) {
    public NoteInk {
        Objects.requireNonNull(line, "line");
        Objects.requireNonNull(halo, "halo");
        Objects.requireNonNull(plate, "plate");
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(font, "font");
    }

    /** As on the pages: the accent on white, words in ink on a white sheet. */
    public static NoteInk ofPages() {
        return new NoteInk(
                InkPalette.LIGHT.accent(), Color.WHITE, Color.WHITE, InkPalette.LIGHT.ink(), BundledFont.semibold());
    }
}
