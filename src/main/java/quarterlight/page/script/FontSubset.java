package quarterlight.page.script;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TTFSubsetter;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** What of a typeface a text needs, as a file of its own. Arabic is kept whole: its letters join by tables that a part would lack. */
public final class FontSubset {
    private static final List<String> TABLES = List.of(
            "head", "hhea", "loca", "maxp", "cvt ", "prep", "glyf", "hmtx", "fpgm", "gasp", "cmap", "OS/2", "name",
            "post");

    private FontSubset() {}

    /** A TrueType file with the characters of a text that the typeface is for. */
    public static byte[] of(ScriptFont font, String text) {
        if (font == ScriptFont.ARABIC) {
            return font.bytes();
        }
        try (TrueTypeFont whole = new TTFParser().parse(new RandomAccessReadBuffer(font.bytes()))) {
            TTFSubsetter subset = new TTFSubsetter(whole, TABLES);
            text.codePoints()
                    .distinct()
                    .filter(c -> ScriptFont.of(c).filter(font::equals).isPresent())
                    .forEach(subset::add);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            subset.writeToStream(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException("the bundled font of " + font.family() + " cannot be read", e);
        }
    }
}
