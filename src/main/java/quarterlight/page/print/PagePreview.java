package quarterlight.page.print;

import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.print.attribute.HashPrintRequestAttributeSet;
import javax.print.attribute.PrintRequestAttributeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.printing.PDFPageable;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Pages that were made, as pictures to look at and on paper. One thread at a time. */
public final class PagePreview implements AutoCloseable {
    private static final double POINTS_PER_INCH = 72;

    private final PDDocument document;
    private final PDFRenderer renderer;

    private PagePreview(PDDocument document) {
        this.document = document;
        this.renderer = new PDFRenderer(document);
    }

    /** @throws IOException if the file cannot be read as PDF */
    public static PagePreview open(Path pdf) throws IOException {
        File file = pdf.toFile();
        return new PagePreview(Loader.loadPDF(file));
    }

    /** How many pages there are. */
    public int count() {
        return document.getNumberOfPages();
    }

    /**
     * One page as a picture.
     *
     * @param page from 0
     * @param widthPx width wanted
     */
    public BufferedImage page(int page, int widthPx) throws IOException {
        double points = document.getPage(page).getMediaBox().getWidth();
        return renderer.renderImageWithDPI(page, (float) (widthPx / points * POINTS_PER_INCH), ImageType.RGB);
    }

    /** The lines of words of a page, from 0, and where they stand. */
    public List<PageLine> lines(int page) throws IOException {
        PDRectangle box = document.getPage(page).getMediaBox();
        List<PageLine> lines = new ArrayList<>();
        PDFTextStripper reader = new PDFTextStripper() {
            @Override
            protected void writeString(String text, List<TextPosition> letters) {
                double left = letters.stream()
                        .mapToDouble(TextPosition::getXDirAdj)
                        .min()
                        .orElse(0);
                double right = letters.stream()
                        .mapToDouble(one -> one.getXDirAdj() + one.getWidthDirAdj())
                        .max()
                        .orElse(left);
                double foot = letters.stream()
                        .mapToDouble(TextPosition::getYDirAdj)
                        .max()
                        .orElse(0);
                double high = letters.stream()
                        .mapToDouble(TextPosition::getFontSizeInPt)
                        .max()
                        .orElse(0);
                lines.add(new PageLine(
                        text,
                        left / box.getWidth(),
                        (foot - high) / box.getHeight(),
                        (right - left) / box.getWidth(),
                        high / box.getHeight()));
            }
        };
        reader.setSortByPosition(true);
        reader.setStartPage(page + 1);
        reader.setEndPage(page + 1);
        reader.getText(document);
        return List.copyOf(lines);
    }

    /**
     * Sends all pages to a printer after asking which; false if the user thinks better of it.
     *
     * @throws IOException if the printer refuses them
     */
    public boolean print(String title) throws IOException {
        java.awt.print.PrinterJob job = java.awt.print.PrinterJob.getPrinterJob();
        job.setJobName(title);
        job.setPageable(new PDFPageable(document));
        PrintRequestAttributeSet wishes = new HashPrintRequestAttributeSet();
        try {
            if (!job.printDialog(wishes)) {
                return false;
            }
            job.print(wishes);
            return true;
        } catch (java.awt.print.PrinterException e) {
            throw new IOException(
                    "The printer did not accept the pages: " + e.getMessage() + ". Check it and print again.", e);
        }
    }

    @Override
    public void close() throws IOException {
        document.close();
    }
}
