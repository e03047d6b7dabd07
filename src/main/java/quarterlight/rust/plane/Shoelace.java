package quarterlight.rust.plane;

import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.algorithm.Area;
import org.locationtech.jts.geom.Coordinate;
import quarterlight.visit.annotation.PixelPoint;

/** Area within a ring of straight sides. */
public final class Shoelace {
    private Shoelace() {}

    /**
     * The area with a sign; above 0 if the ring turns from the x axis to the y axis.
     *
     * @param ring corners in order, the last joins the first; 3 or more, else 0
     */
    public static double signedArea(List<PixelPoint> ring) {
        if (ring.isEmpty()) {
            return 0;
        }
        Coordinate[] closed = Stream.concat(ring.stream(), Stream.of(ring.get(0)))
                .map(p -> new Coordinate(p.x(), p.y()))
                .toArray(Coordinate[]::new);
        return -Area.ofRingSigned(closed);
    }

    /** The area, 0 or more, whichever way round the ring runs. */
    public static double area(List<PixelPoint> ring) {
        return Math.abs(signedArea(ring));
    }
}
