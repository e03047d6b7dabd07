package quarterlight.draw;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.precision.GeometryPrecisionReducer;

/** Areas on a grid of 0.1 mm: every result has its corners on the grid, so neighbors meet exactly and files are stable. */
final class Shapes {
    static final PrecisionModel TENTHS = new PrecisionModel(10);
    private static final GeometryFactory FACTORY = new GeometryFactory(TENTHS);

    private Shapes() {}

    static Geometry polygon(Curve curve) {
        List<Coordinate> ring = new ArrayList<>(curve.points());
        if (!ring.get(0).equals2D(ring.get(ring.size() - 1))) {
            ring.add(ring.get(0));
        }
        return exact(FACTORY.createPolygon(ring.toArray(Coordinate[]::new)));
    }

    /** Onto the grid; a loop that crosses itself is taken as the area it encloses. */
    static Geometry exact(Geometry area) {
        Geometry sound = area.isValid() ? area : area.buffer(0);
        return surface(GeometryPrecisionReducer.reduce(sound, TENTHS));
    }

    static Geometry empty() {
        return FACTORY.createPolygon();
    }

    static Geometry union(Geometry a, Geometry b) {
        return surface(OverlayNG.overlay(a, b, OverlayNG.UNION, TENTHS));
    }

    static Geometry minus(Geometry a, Geometry b) {
        return surface(OverlayNG.overlay(a, b, OverlayNG.DIFFERENCE, TENTHS));
    }

    static Geometry common(Geometry a, Geometry b) {
        return surface(OverlayNG.overlay(a, b, OverlayNG.INTERSECTION, TENTHS));
    }

    static Geometry stripe(Curve curve, double width, boolean roundEnds) {
        Geometry line = FACTORY.createLineString(curve.points().toArray(Coordinate[]::new));
        int cap = roundEnds ? BufferParameters.CAP_ROUND : BufferParameters.CAP_FLAT;
        return exact(BufferOp.bufferOp(line, width / 2, new BufferParameters(12, cap)));
    }

    static Geometry grown(Geometry area, double mm) {
        return exact(BufferOp.bufferOp(area, mm, new BufferParameters(12)));
    }

    /** Corners rounded with radius r, those that point outward and those that point inward. */
    static Geometry rounded(Geometry area, double r) {
        BufferParameters parameters = new BufferParameters(14);
        Geometry convex = BufferOp.bufferOp(BufferOp.bufferOp(area, -r, parameters), r, parameters);
        return exact(BufferOp.bufferOp(BufferOp.bufferOp(convex, r, parameters), -r, parameters));
    }

    static Geometry mirrored(Geometry area, Lateral axis) {
        if (axis == Lateral.NONE) {
            throw new DrawingFault("a side view has no middle line to mirror at");
        }
        return axis == Lateral.FIRST
                ? AffineTransformation.scaleInstance(-1, 1).transform(area)
                : AffineTransformation.scaleInstance(1, -1).transform(area);
    }

    /** The polygons of at least half a square millimeter; lines and points that an overlay leaves behind are dropped. */
    static List<Polygon> polygons(Geometry area) {
        List<Polygon> found = new ArrayList<>();
        for (int i = 0; i < area.getNumGeometries(); i++) {
            if (area.getGeometryN(i) instanceof Polygon polygon && polygon.getArea() > 0.5) {
                found.add(polygon);
            }
        }
        return found;
    }

    private static Geometry surface(Geometry area) {
        List<Polygon> found = polygons(area);
        return found.size() == 1 ? found.get(0) : FACTORY.createMultiPolygon(found.toArray(Polygon[]::new));
    }
}
