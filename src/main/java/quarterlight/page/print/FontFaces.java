package quarterlight.page.print;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.regex.Matcher;
import quarterlight.page.script.FontSubset;
import quarterlight.page.script.ScriptFont;

/** The bundled typeface as style rules with the fonts within, so that a file looks the same where the typeface is not installed. */
public final class FontFaces {
    private FontFaces() {}

    /** Rules for the regular and the semibold cut; holds no character that XML would read as markup. */
    public static String css() {
        return face("SourceSans3-Regular.ttf", "400") + face("SourceSans3-SemiBold.ttf", "600");
    }

    /** A page with the rules before its first style, for the main typeface and for what of others its text needs. */
    public static String within(String page) {
        StringBuilder rules = new StringBuilder(css());
        for (ScriptFont font : ScriptFont.neededFor(page)) {
            rules.append("@font-face { font-family: '")
                    .append(font.family())
                    .append("'; src: url(data:font/ttf;base64,")
                    .append(Base64.getEncoder().encodeToString(FontSubset.of(font, page)))
                    .append(") format('truetype'); }\n");
        }
        return page.replaceFirst("<style>", Matcher.quoteReplacement("<style>" + rules));
    }

    private static String face(String file, String weight) {
        try (InputStream in = FontFaces.class.getResourceAsStream("/quarterlight/fonts/" + file)) {
            return "@font-face { font-family: 'Source Sans 3'; font-weight: " + weight
                    + "; src: url(data:font/ttf;base64,"
                    + Base64.getEncoder().encodeToString(in.readAllBytes()) + ") format('truetype'); }\n";
        } catch (IOException e) {
            throw new UncheckedIOException("the bundled font " + file + " cannot be read", e);
        }
    }
}
