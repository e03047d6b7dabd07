package quarterlight.photo.paper;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.io.IOUtils;
import org.apache.pdfbox.io.RandomAccessReadBufferedFile;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import quarterlight.photo.MediaType;
import quarterlight.photo.PictureUnreadable;
import quarterlight.photo.header.FileFacts;
import quarterlight.visit.photo.MediaFacts;
import quarterlight.visit.photo.MediaHeader;

/**
 * A PDF document as pages to look at. A page counts as a picture whose long side is {@link #LONG_SIDE} pixels, whatever its size on paper; later pages are shown within the shape of the first. The time at which
 * a document says it was made is not the time of the visit, so none is taken from it. For one thread.
 */
public final class PaperFile implements AutoCloseable {
    /** Long side of a page in its own pixels: A4 at 300 dots to the inch. */
    public static final int LONG_SIDE = 3508;
    /** Pages beyond are kept with the file, but not shown. */
    public static final int MAX_PAGES = 2000;

    private final Path file;
    private final PDDocument document;

    private PaperFile(Path file, PDDocument document) {
        this.file = file;
        this.document = document;
    }

    /** @throws PictureUnreadable if it is encrypted, or no document that can be read */
    public static PaperFile open(Path file) throws PictureUnreadable {
        PaperFonts.use();
        try {
            PDDocument document = Loader.loadPDF(
                    new RandomAccessReadBufferedFile(file.toFile()),
                    "",
                    null,
                    null,
                    IOUtils.createTempFileOnlyStreamCache());
            return new PaperFile(file, document);
        } catch (InvalidPasswordException e) {
            throw new PictureUnreadable(
                    file, "it is locked by a password; take in a copy that was saved without one as well", e);
        } catch (IOException | RuntimeException | StackOverflowError e) {
            throw new PictureUnreadable(file, "its PDF data is damaged", e);
        }
    }

    /** What a document says of itself; damage is a note. */
    public static FileFacts facts(Path file) {
        List<String> notes = new ArrayList<>();
        try (PaperFile paper = open(file)) {
            int pages = paper.document.getNumberOfPages();
            if (pages < 1) {
                return unread("The paper has no page that can be shown; the file is kept.");
            }
            if (pages > MAX_PAGES) {
                notes.add("The paper says it has " + pages + " pages; the first " + MAX_PAGES
                        + " can be shown, the file is kept whole.");
            }
            Optional<Size> size = paper.size(1);
            return new FileFacts(
                    MediaType.PDF,
                    MediaHeader.NONE.withSize(
                            size.isPresent() ? OptionalInt.of(size.get().width) : OptionalInt.empty(),
                            size.isPresent() ? OptionalInt.of(size.get().height) : OptionalInt.empty(),
                            1),
                    notes,
                    Optional.empty(),
                    MediaFacts.ofPages(Math.min(pages, MAX_PAGES)));
        } catch (PictureUnreadable e) {
            return unread("The file is kept, but it cannot be shown: " + e.reason() + ".");
        }
    }

    private static FileFacts unread(String note) {
        return FileFacts.of(MediaType.PDF, MediaFacts.NONE, List.of()).damaged(note);
    }

    /** A page upright in its own pixels, and the scale that brings it there. */
    private record Size(int width, int height, float scale) {}

    private Optional<Size> size(int number) {
        try {
            PDPage page = document.getPage(number - 1);
            PDRectangle box = page.getCropBox();
            boolean sideways = page.getRotation() % 180 != 0;
            float width = sideways ? box.getHeight() : box.getWidth();
            float height = sideways ? box.getWidth() : box.getHeight();
            float longest = Math.max(width, height);
            if (!(width > 0) || !(height > 0) || Float.isInfinite(longest)) {
                return Optional.empty();
            }
            float scale = LONG_SIDE / longest;
            return Optional.of(
                    new Size(Math.max(1, (int) (width * scale)), Math.max(1, (int) (height * scale)), scale));
        } catch (RuntimeException | StackOverflowError e) {
            return Optional.empty();
        }
    }

    /**
     * A page as a picture, its long side about {@code longSide} pixels and {@link #LONG_SIDE} at most.
     *
     * @param number from 1
     */
    public BufferedImage page(int number, int longSide) throws PictureUnreadable {
        if (number < 1 || number > Math.min(MAX_PAGES, document.getNumberOfPages())) {
            throw new PictureUnreadable(file, "it has no page " + number);
        }
        Size size = size(number)
                .orElseThrow(() -> new PictureUnreadable(file, "page " + number + " is damaged, or has no size"));
        Size first = size(1).orElse(size);
        float fit = Math.min(first.width() / (float) size.width(), first.height() / (float) size.height());
        float reduced = Math.min(LONG_SIDE, Math.max(1, longSide)) / (float) LONG_SIDE;
        try {
            PDFRenderer renderer = new PDFRenderer(document);
            renderer.setSubsamplingAllowed(true);
            BufferedImage page =
                    renderer.renderImage(number - 1, size.scale() * Math.min(1, fit) * reduced, ImageType.RGB);
            return within(
                    page, Math.max(1, (int) (first.width() * reduced)), Math.max(1, (int) (first.height() * reduced)));
        } catch (IOException | RuntimeException | StackOverflowError e) {
            throw new PictureUnreadable(file, "page " + number + " is damaged, or of a kind that cannot be shown", e);
        }
    }

    /** A page of another shape than the first lies at the top left of one of that shape, so that places on it are named alike. */
    private static BufferedImage within(BufferedImage page, int width, int height) {
        boolean same = Math.abs(page.getWidth() - width) <= 1 && Math.abs(page.getHeight() - height) <= 1;
        if (same) {
            return page;
        }
        BufferedImage whole = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = whole.createGraphics();
        g.setColor(Color.LIGHT_GRAY);
        g.fillRect(0, 0, width, height);
        g.drawImage(page, 0, 0, null);
        g.dispose();
        return whole;
    }

    @Override
    public void close() {
        try {
            document.close();
        } catch (IOException e) {
            System.getLogger(PaperFile.class.getName()).log(System.Logger.Level.DEBUG, "a document stays open", e);
        }
    }
}
