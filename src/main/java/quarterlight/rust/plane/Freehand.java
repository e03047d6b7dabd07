package quarterlight.rust.plane;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.simplify.TopologyPreservingSimplifier;
import quarterlight.visit.annotation.PixelPoint;

/** Makes a ring of few points from a line drawn by hand. Pure functions. */
public final class Freehand {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private Freehand() {}

    /**
     * The points that matter: no point left out lies farther than the tolerance from what is kept (D. Douglas, T. Peucker, Algorithms for
     * the reduction of the number of points required to represent a digitized line or its caricature, 1973, from memory), and leaving
     * points out makes no new crossing.
     *
     * @param line in the order drawn, pixels; its end joins its beginning
     * @param tolerancePx above 0
     * @return fewer than 3 points if the line encloses nothing
     */
    public static List<PixelPoint> thinned(List<PixelPoint> line, double tolerancePx) {
        if (line.size() < 3) {
            return List.copyOf(line);
        }
        Coordinate[] all = new Coordinate[line.size() + 1];
        for (int i = 0; i < all.length; i++) {
            PixelPoint p = line.get(i % line.size());
            all[i] = new Coordinate(p.x(), p.y());
        }
        Coordinate[] kept = TopologyPreservingSimplifier.simplify(FACTORY.createLineString(all), tolerancePx)
                .getCoordinates();
        List<PixelPoint> ring = new ArrayList<>();
        for (int i = 0; i + 1 < kept.length; i++) {
            ring.add(new PixelPoint(kept[i].x, kept[i].y));
        }
        return ring;
    }
}
