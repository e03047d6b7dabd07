package quarterlight.photo.paper;

import java.io.IOException;
import java.io.InputStream;
import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;

/**
 * The one font by which words are drawn whose own font a document does not hold: the same on every computer, and without a search through the
 * computer's fonts, which takes longer than a page may.
 */
final class PaperFonts implements FontMapper {
    private static final String USUAL = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    private final TrueTypeFont font;

    private PaperFonts(TrueTypeFont font) {
        this.font = font;
    }

    private static final class Ready {
        static final boolean SET = set();

        private static boolean set() {
            try (InputStream in = PDDocument.class.getResourceAsStream(USUAL)) {
                if (in != null) {
                    FontMappers.set(new PaperFonts(new TTFParser().parse(new RandomAccessReadBuffer(in))));
                }
                return in != null;
            } catch (IOException e) {
                return false;
            }
        }
    }

    /** Takes effect for the whole process; false if the library has no font of its own, and the computer's are searched. */
    static boolean use() {
        return Ready.SET;
    }

    @Override
    public FontMapping<TrueTypeFont> getTrueTypeFont(String baseFont, PDFontDescriptor descriptor) {
        return new FontMapping<>(font, true);
    }

    @Override
    public FontMapping<FontBoxFont> getFontBoxFont(String baseFont, PDFontDescriptor descriptor) {
        return new FontMapping<>(font, true);
    }

    @Override
    public CIDFontMapping getCIDFont(String baseFont, PDFontDescriptor descriptor, PDCIDSystemInfo info) {
        return new CIDFontMapping(null, font, true);
    }
}
