package quarterlight.ui.kit.look;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import quarterlight.diagram.ink.TextMeasure;

/** The bundled typeface, Source Sans 3: made known to the window system once, then used by its family name. */
public final class Typeface {
    public static final String FAMILY = "Source Sans 3";
    private static final String ITALIC = "SourceSans3-Italic.ttf";

    private Typeface() {}

    /**
     * Registers the bundled fonts; safe to repeat.
     *
     * @param measure has loaded the two upright ones
     */
    public static void register(TextMeasure measure) {
        GraphicsEnvironment screen = GraphicsEnvironment.getLocalGraphicsEnvironment();
        List.of(measure.regular(), measure.bold(), italic()).forEach(screen::registerFont);
    }

    private static Font italic() {
        try (InputStream in = Typeface.class.getResourceAsStream("/quarterlight/fonts/" + ITALIC)) {
            return Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (IOException e) {
            throw new UncheckedIOException("the bundled font " + ITALIC + " cannot be read", e);
        } catch (FontFormatException e) {
            throw new IllegalStateException("the bundled font " + ITALIC + " is damaged", e);
        }
    }
}
