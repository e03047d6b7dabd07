package quarterlight.demo;

import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.util.List;

/**
 * A drawn photo, upright, with what is known of it.
 *
 * @param patches rust or damage drawn on it
 * @param scale as the traces table writes it, in pixels of the photo; empty if nothing of known size is on it
 */
record Picture(BufferedImage image, List<Patch> patches, String scale) {
    /**
     * @param kind as the traces table names it
     * @param outline in pixels of the photo
     * @param onSheetMm the same outline on the sheet, mm, before perspective
     * @param areaMm2 of the outline on the sheet
     */
    record Patch(String kind, List<Point2D.Double> outline, List<Point2D.Double> onSheetMm, double areaMm2) {}
}
