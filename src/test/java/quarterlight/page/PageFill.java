package quarterlight.page;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** Measures how full the pages of a PDF are. */
public final class PageFill {
    private static final double HALF = 0.5;
    private static final float DPI = 24;
    private static final double TOP_MM = 11;
    private static final double FOOT_MM = 14;
    private static final int PAPER_WHITE = 250;

    private PageFill() {}

    /** Pages that are less than half full, from 1. The first page stands for itself, as does a drawing; the last may end anywhere. */
    public static List<Integer> halfEmpty(PDDocument document) throws IOException {
        PDFRenderer renderer = new PDFRenderer(document);
        List<Integer> empty = new ArrayList<>();
        for (int page = 1; page < document.getNumberOfPages() - 1; page++) {
            if (filled(renderer.renderImageWithDPI(page, DPI, ImageType.GRAY)) < HALF) {
                empty.add(page + 1);
            }
        }
        return empty;
    }

    /** How far down the room between the margins something is drawn. */
    private static double filled(BufferedImage page) {
        double perMm = DPI / 25.4;
        int top = (int) (TOP_MM * perMm);
        int foot = (int) (page.getHeight() - FOOT_MM * perMm);
        int lowest = top;
        for (int y = top; y < foot; y++) {
            for (int x = 0; x < page.getWidth(); x++) {
                if (page.getRaster().getSample(x, y, 0) < PAPER_WHITE) {
                    lowest = y;
                }
            }
        }
        return (double) (lowest - top) / (foot - top);
    }
}
