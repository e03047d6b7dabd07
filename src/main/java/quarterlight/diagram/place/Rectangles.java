package quarterlight.diagram.place;

import java.awt.geom.Rectangle2D;

/** Rectangles made of rectangles. */
public final class Rectangles {
    private Rectangles() {}

    /** A rectangle grown on every side. */
    public static Rectangle2D grown(Rectangle2D r, double by) {
        return new Rectangle2D.Double(r.getX() - by, r.getY() - by, r.getWidth() + 2 * by, r.getHeight() + 2 * by);
    }
}
