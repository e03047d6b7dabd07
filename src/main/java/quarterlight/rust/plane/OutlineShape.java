package quarterlight.rust.plane;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PixelPoint;

/** Outlines as shapes of the geometry library, in pixels, and back. */
public final class OutlineShape {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private OutlineShape() {}

    public static Polygon of(Outline outline) {
        LinearRing[] holes = outline.holes().stream().map(OutlineShape::ring).toArray(LinearRing[]::new);
        return FACTORY.createPolygon(ring(outline.shell()), holes);
    }

    /** The outline with marks outside a photo of this size drawn back to its edge; for marks off by a pixel or so. */
    public static Outline drawnBack(Outline outline, int width, int height) {
        return new Outline(
                drawnBack(outline.shell(), width, height),
                outline.holes().stream()
                        .map(hole -> drawnBack(hole, width, height))
                        .toList());
    }

    private static List<PixelPoint> drawnBack(List<PixelPoint> ring, int width, int height) {
        return ring.stream()
                .map(p -> new PixelPoint(Math.max(0, Math.min(width, p.x())), Math.max(0, Math.min(height, p.y()))))
                .toList();
    }

    /** A shape without any area. */
    public static Geometry nothing() {
        return FACTORY.createPolygon();
    }

    /** The parts of a shape that have an area, each as an outline. */
    public static List<Outline> outlines(Geometry shape) {
        List<Outline> found = new ArrayList<>();
        for (int i = 0; i < shape.getNumGeometries(); i++) {
            if (shape.getGeometryN(i) instanceof Polygon part && part.getArea() > 0) {
                found.add(outline(part));
            }
        }
        return found;
    }

    /** The shape's area on the panel, mm2. */
    public static double areaMm2(Geometry shape, PhotoPlane plane) {
        return outlines(shape).stream().mapToDouble(plane::areaMm2).sum();
    }

    private static Outline outline(Polygon part) {
        List<List<PixelPoint>> holes = new ArrayList<>();
        for (int i = 0; i < part.getNumInteriorRing(); i++) {
            holes.add(points(part.getInteriorRingN(i)));
        }
        return new Outline(points(part.getExteriorRing()), holes);
    }

    private static List<PixelPoint> points(LinearRing ring) {
        List<PixelPoint> points = new ArrayList<>();
        Coordinate[] all = ring.getCoordinates();
        for (int i = 0; i + 1 < all.length; i++) {
            points.add(new PixelPoint(all[i].x, all[i].y));
        }
        return points;
    }

    private static LinearRing ring(List<PixelPoint> points) {
        Coordinate[] closed = new Coordinate[points.size() + 1];
        for (int i = 0; i < closed.length; i++) {
            PixelPoint p = points.get(i % points.size());
            closed[i] = new Coordinate(p.x(), p.y());
        }
        return FACTORY.createLinearRing(closed);
    }
}
