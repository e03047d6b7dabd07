package quarterlight.ui.kit;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;

/** The bundled typeface, Source Sans 3: made known to the window system once, then used by its family name. */
public final class Typeface {
    public static final String FAMILY = "Source Sans 3";
    private static final List<String> FILES =
            List.of("SourceSans3-Regular.ttf", "SourceSans3-Italic.ttf", "SourceSans3-SemiBold.ttf");

    private Typeface() {}

    /** Registers the bundled font files; safe to repeat. */
    public static void register() {
        for (String file : FILES) {
            try (InputStream in = Typeface.class.getResourceAsStream("/quarterlight/fonts/" + file)) {
                GraphicsEnvironment.getLocalGraphicsEnvironment().registerFont(Font.createFont(Font.TRUETYPE_FONT, in));
            } catch (IOException e) {
                throw new UncheckedIOException("the bundled font " + file + " cannot be read", e);
            } catch (FontFormatException e) {
                throw new IllegalStateException("the bundled font " + file + " is damaged", e);
            }
        }
    }
}
