package quarterlight.draw;

import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * One path of a view, in car coordinates.
 *
 * @param kind class of the path: silhouette, zone, gap, detail, glass, wheel
 * @param zone id of the zone, for kind zone only
 * @param shape polygon(s) or line
 */
record Piece(String kind, Optional<String> zone, Geometry shape, Applies applies) {
    static Piece plain(String kind, Geometry shape, Applies applies) {
        return new Piece(kind, Optional.empty(), shape, applies);
    }

    static Piece line(String kind, Curve curve, Applies applies) {
        return plain(
                kind,
                new GeometryFactory(Shapes.TENTHS)
                        .createLineString(curve.points().toArray(Coordinate[]::new)),
                applies);
    }

    Piece with(Geometry other) {
        return new Piece(kind, zone, other, applies);
    }

    Piece asZone(String other) {
        return new Piece(kind, Optional.of(other), shape, applies);
    }
}
