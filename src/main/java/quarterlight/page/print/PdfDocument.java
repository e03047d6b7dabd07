package quarterlight.page.print;

import com.openhtmltopdf.extend.FSStream;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.awt.Font;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.BitSet;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.logging.Level;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import quarterlight.diagram.ink.TextMeasure;
import quarterlight.page.script.ArabicForms;
import quarterlight.page.script.Direction;
import quarterlight.page.script.LineBreaks;
import quarterlight.page.script.ScriptFont;
import quarterlight.units.XmlText;

/**
 * Turns a page in XHTML into a tagged PDF: PDF/A-2a (ISO 19005-2) and PDF/UA-1 (ISO 14289-1) at once, with the bundled typeface
 * embedded. Pictures come as data URIs or are handed over; nothing else is ever loaded. A character that the typeface lacks is
 * written as its code, since these standards forbid a glyph that stands for nothing.
 */
public final class PdfDocument {
    private static final String FAMILY = "Source Sans 3";
    private static final int REGULAR = 400;
    private static final int SEMIBOLD = 600;
    private static final String PICTURE = "picture";
    private static final IntPredicate HAS_GLYPH = glyphs();
    /** Joiners, direction marks and picture selectors: they shape what stands around them and are themselves nothing to see. */
    private static final Pattern INVISIBLE = Pattern.compile("[\u200C-\u200F\u2060\uFE0E\uFE0F]");

    private static final int GSUB = 0x47535542;
    private static final int HIDDEN = 0x47535558;

    private PdfDocument() {}

    /**
     * @param xhtml well-formed, with lang, title, description and bookmarks
     * @param out stays open
     */
    public static void write(String xhtml, OutputStream out) throws IOException {
        write(xhtml, Map.of(), out);
    }

    /**
     * Also shows pictures that are not in the page itself.
     *
     * @param pictures JPEG files by their address, {@code picture:NAME}
     */
    public static void write(String xhtml, Map<String, byte[]> pictures, OutputStream out) throws IOException {
        writeIf(pages -> true, xhtml, pictures, out);
    }

    /**
     * Writes it only if it takes as many pages as are accepted, which is known before anything is drawn.
     *
     * @return whether it was written
     */
    public static boolean writeIf(IntPredicate accepted, String xhtml, Map<String, byte[]> pictures, OutputStream out)
            throws IOException {
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
                (uri, type) -> uri != null && (uri.startsWith("data:") || pictures.containsKey(uri)),
                ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
        try (BatikSVGDrawer drawer = new BatikSVGDrawer()) {
            builder.useSVGDrawer(drawer);
            builder.useProtocolsStreamImplementation(address -> new Picture(pictures.get(address)), PICTURE);
            String page = prepared(xhtml);
            ScriptFont.neededFor(page).forEach(font -> stand(builder, font));
            if (Direction.isNeededFor(page)) {
                builder.useUnicodeBidiSplitter(Direction::new);
                builder.useUnicodeBidiReorderer(new Direction());
            }
            builder.useUnicodeLineBreaker(new LineBreaks());
            builder.withHtmlContent(page, null);
            builder.toStream(out);
            try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
                renderer.layout();
                boolean written = accepted.test(
                        renderer.getRootBox().getLayer().getPages().size());
                if (written) {
                    renderer.createPDF();
                }
                return written;
            }
        }
    }

    /** The page with Arabic letters joined, units kept with their numbers, and what no bundled typeface has written as its code. */
    private static String prepared(String xhtml) {
        String shaped = ArabicForms.shaped(XmlText.clean(xhtml));
        return XmlText.coded(INVISIBLE.matcher(shaped).replaceAll(""), HAS_GLYPH);
    }

    /** A typeface that stands in where the main one lacks a character; it has one cut. */
    private static void stand(PdfRendererBuilder builder, ScriptFont font) {
        builder.useFont(
                () -> new ByteArrayInputStream(withoutLigatures(font.bytes())),
                font.family(),
                REGULAR,
                FontStyle.NORMAL,
                true,
                EnumSet.of(FSFontUseCase.DOCUMENT, FSFontUseCase.SVG));
    }

    /** What the regular cut can show; the others are cut from the same set. */
    private static IntPredicate glyphs() {
        Font font = TextMeasure.bundled().regular();
        BitSet ascii = new BitSet();
        IntStream.range(' ', 0x7F).filter(font::canDisplay).forEach(ascii::set);
        // a font says that it can display a format character, which turns or joins what stands around it, and draws
        // nothing
        return c -> ascii.get(c)
                || c == '\n'
                || c == '\r'
                || c == '\t'
                || Character.getType(c) != Character.FORMAT
                        && (font.canDisplay(c) || ScriptFont.of(c).isPresent());
    }

    /** A picture in memory, as the renderer reads it. */
    private static final class Picture implements FSStream {
        private final byte[] jpeg;

        Picture(byte[] jpeg) {
            this.jpeg = jpeg;
        }

        @Override
        public InputStream getStream() {
            return new ByteArrayInputStream(jpeg);
        }

        @Override
        public Reader getReader() {
            return new StringReader("");
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
