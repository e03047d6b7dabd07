package quarterlight.page.photo;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** The bundled typeface, for drawing where no typeface is installed. */
final class BundledFont {
    private static final String SEMIBOLD = "/quarterlight/fonts/SourceSans3-SemiBold.ttf";

    private BundledFont() {}

    static Font semibold() {
        try (InputStream in = BundledFont.class.getResourceAsStream(SEMIBOLD)) {
            return Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (IOException e) {
            throw new UncheckedIOException("the bundled font " + SEMIBOLD + " cannot be read", e);
        } catch (FontFormatException e) {
            throw new IllegalStateException("the bundled font " + SEMIBOLD + " is damaged", e);
        }
    }
}
