package quarterlight.page;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.EnumSet;
import java.util.Set;
import java.util.logging.Level;

/**
 * Turns a page in XHTML into a tagged PDF: PDF/A-2a (ISO 19005-2) and PDF/UA-1 (ISO 14289-1) at once, with the bundled typeface
 * embedded. Pictures come as data URIs; nothing else is ever loaded.
 */
final class PdfDocument {
    private static final String FAMILY = "Source Sans 3";
    private static final int REGULAR = 400;
    private static final int SEMIBOLD = 600;
    private static final int GSUB = 0x47535542;
    private static final int HIDDEN = 0x47535558;

    private PdfDocument() {}

    /**
     * @param xhtml well-formed, with lang, title, description and bookmarks
     * @param out stays open
     */
    static void write(String xhtml, OutputStream out) throws IOException {
        XRLog.listRegisteredLoggers().forEach(name -> XRLog.setLevel(name, Level.OFF));
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.usePdfUaAccessibility(true);
        builder.usePdfAConformance(PdfRendererBuilder.PdfAConformance.PDFA_2_A);
        builder.useColorProfile(ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData());
        builder.withProducer("Quarterlight");
        font(builder, "SourceSans3-Regular.ttf", REGULAR, FontStyle.NORMAL);
        font(builder, "SourceSans3-Italic.ttf", REGULAR, FontStyle.ITALIC);
        font(builder, "SourceSans3-SemiBold.ttf", SEMIBOLD, FontStyle.NORMAL);
        builder.useExternalResourceAccessControl(
                (uri, type) -> uri != null && uri.startsWith("data:"),
                ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
        try (BatikSVGDrawer drawer = new BatikSVGDrawer()) {
            builder.useSVGDrawer(drawer);
            builder.withHtmlContent(xhtml, null);
            builder.toStream(out);
            builder.run();
        }
    }

    private static void font(PdfRendererBuilder builder, String file, int weight, FontStyle style) {
        // a drawing takes the last font of the family, whatever its style: it gets no italic
        Set<FSFontUseCase> uses = style == FontStyle.ITALIC
                ? EnumSet.of(FSFontUseCase.DOCUMENT)
                : EnumSet.of(FSFontUseCase.DOCUMENT, FSFontUseCase.SVG);
        builder.useFont(() -> open(file), FAMILY, weight, style, true, uses);
    }

    private static InputStream open(String file) {
        try (InputStream in = PdfDocument.class.getResourceAsStream("/quarterlight/fonts/" + file)) {
            return new ByteArrayInputStream(withoutLigatures(in.readAllBytes()));
        } catch (IOException e) {
            throw new UncheckedIOException("the bundled font " + file + " cannot be read", e);
        }
    }

    /**
     * Hides the font's table of glyph substitutions: a ligature written by the PDF library has no way back to its letters, so
     * "left" could not be searched. The table directory (OpenType 1.9, "Table directory") has 16 bytes a table, its tag first.
     */
    private static byte[] withoutLigatures(byte[] font) {
        ByteBuffer directory = ByteBuffer.wrap(font);
        int tables = directory.getShort(4);
        for (int i = 0; i < tables; i++) {
            int at = 12 + 16 * i;
            if (directory.getInt(at) == GSUB) {
                directory.putInt(at, HIDDEN);
            }
        }
        return font;
    }
}
