package quarterlight.page.print;

import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import javax.print.attribute.HashPrintRequestAttributeSet;
import javax.print.attribute.PrintRequestAttributeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.printing.PDFPageable;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

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
