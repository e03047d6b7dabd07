package quarterlight.diagram.ink;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;

/**
 * The typeface of diagrams and how wide its words run. Immutable; needs no display.
 *
 * @param regular the family at any size
 * @param bold its heavier cut
 */
public record TextMeasure(Font regular, Font bold) {
    /** Family name in SVG; pages embed it under this name. */
    public static final String FAMILY = "Source Sans 3";

    private static final FontRenderContext PLAIN = new FontRenderContext(new AffineTransform(), true, true);

    public TextMeasure {
        Objects.requireNonNull(regular, "regular");
        Objects.requireNonNull(bold, "bold");
    }

    /** Read when it is first asked for. */
    private static final class Bundled {
        static final TextMeasure MEASURE =
                new TextMeasure(load("SourceSans3-Regular.ttf"), load("SourceSans3-SemiBold.ttf"));
    }

    /** The bundled typeface. */
    public static TextMeasure bundled() {
        return Bundled.MEASURE;
    }

    private static Font load(String name) {
        try (InputStream in = TextMeasure.class.getResourceAsStream("/quarterlight/fonts/" + name)) {
            return Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (IOException e) {
            throw new UncheckedIOException(name + " cannot be read", e);
        } catch (FontFormatException e) {
            throw new IllegalStateException(name + " is no font", e);
        }
    }

    /** Width of a line of text, px. */
    public double width(String text, double sizePx, boolean heavy) {
        return font(sizePx, heavy).getStringBounds(text, PLAIN).getWidth();
    }

    public Font font(double sizePx, boolean heavy) {
        return (heavy ? bold : regular).deriveFont((float) sizePx);
    }
}
