package quarterlight.rust.plane;

import java.util.List;
import quarterlight.visit.annotation.PixelPoint;

/** Area within a ring of straight sides, by the shoelace formula about the ring's first point. */
public final class Shoelace {
    private Shoelace() {}

    /**
     * Half the sum of the cross products of neighbors; above 0 if the ring turns from the x axis to the y axis.
     *
     * @param ring corners in order, the last joins the first; 3 or more, else 0
     */
    public static double signedArea(List<PixelPoint> ring) {
        double twice = 0;
        for (int i = 1; i + 1 < ring.size(); i++) {
            PixelPoint origin = ring.get(0);
            PixelPoint p = ring.get(i);
            PixelPoint q = ring.get(i + 1);
            twice += (p.x() - origin.x()) * (q.y() - origin.y()) - (q.x() - origin.x()) * (p.y() - origin.y());
        }
        return twice / 2;
    }

    /** The area, 0 or more, whichever way round the ring runs. */
    public static double area(List<PixelPoint> ring) {
        return Math.abs(signedArea(ring));
    }
}
