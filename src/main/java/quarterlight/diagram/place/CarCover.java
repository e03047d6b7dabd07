package quarterlight.diagram.place;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import quarterlight.diagram.DiagramShape;
import quarterlight.diagram.ShapeKind;
import quarterlight.diagram.ViewDrawing;

/** Where in a cell of the sheet the car is drawn, to the nearest two px: what stands outside its zone must stay off it. */
public final class CarCover {
    private static final double CELL_PX = 2;
    /** What is drawn over a cell's edge covers the cell. */
    private static final int INK = Color.WHITE.getRGB();

    private final Rectangle2D cell;
    private final BufferedImage cover;

    /** @param toPx from mm of the view to px of the sheet */
    public CarCover(ViewDrawing view, Rectangle2D cell, AffineTransform toPx) {
        this.cell = cell;
        cover = new BufferedImage(
                Math.max(1, (int) Math.ceil(cell.getWidth() / CELL_PX)),
                Math.max(1, (int) Math.ceil(cell.getHeight() / CELL_PX)),
                BufferedImage.TYPE_BYTE_BINARY);
        Graphics2D g = cover.createGraphics();
        AffineTransform toCells = AffineTransform.getScaleInstance(1 / CELL_PX, 1 / CELL_PX);
        toCells.translate(-cell.getX(), -cell.getY());
        toCells.concatenate(toPx);
        g.setColor(Color.WHITE);
        for (DiagramShape shape : view.shapes()) {
            if (shape.kind() == ShapeKind.SILHOUETTE || shape.kind() == ShapeKind.ZONE) {
                java.awt.Shape there = toCells.createTransformedShape(shape.path());
                g.fill(there);
                g.draw(there);
            }
        }
        g.dispose();
    }

    /** Whether some of a rectangle of the sheet lies on the car. */
    public boolean touches(Rectangle2D box) {
        int left = Math.max(0, (int) Math.floor((box.getMinX() - cell.getX()) / CELL_PX));
        int right = Math.min(cover.getWidth() - 1, (int) Math.floor((box.getMaxX() - cell.getX()) / CELL_PX));
        int top = Math.max(0, (int) Math.floor((box.getMinY() - cell.getY()) / CELL_PX));
        int bottom = Math.min(cover.getHeight() - 1, (int) Math.floor((box.getMaxY() - cell.getY()) / CELL_PX));
        for (int y = top; y <= bottom; y++) {
            for (int x = left; x <= right; x++) {
                if (cover.getRGB(x, y) == INK) {
                    return true;
                }
            }
        }
        return false;
    }
}
