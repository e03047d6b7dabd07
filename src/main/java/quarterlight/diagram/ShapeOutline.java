package quarterlight.diagram;

import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;

/** A path as straight segments: rings of x, y pairs, even-odd inside. Immutable; unit of the path it came from (mm in a view). */
public final class ShapeOutline {
    /** Largest distance between a curve and its segments, mm; a tenth of the finest line at page size. */
    static final double FLATNESS_MM = 0.4;

    private final List<double[]> rings;
    private final boolean closed;
    private final Rectangle2D bounds;
    private final double thickness;

    private ShapeOutline(List<double[]> rings, boolean closed, Rectangle2D bounds) {
        this.rings = rings;
        this.closed = closed;
        this.bounds = bounds;
        double perimeter = perimeter();
        double shoelace = 0;
        for (double[] ring : rings) {
            shoelace += Math.abs(signedArea(ring));
        }
        thickness = perimeter > 0 ? 2 * shoelace / perimeter : 0;
    }

    /** Mean width of a long thin shape: twice its area over its perimeter; half the diameter of a disc. */
    double thickness() {
        return thickness;
    }

    private static double signedArea(double[] ring) {
        double twice = 0;
        int n = ring.length / 2;
        for (int i = 0, j = n - 1; i < n; j = i++) {
            twice += ring[2 * j] * ring[2 * i + 1] - ring[2 * i] * ring[2 * j + 1];
        }
        return twice / 2;
    }

    public static ShapeOutline of(Shape shape) {
        List<double[]> rings = new ArrayList<>();
        double[] points = new double[64];
        int count = 0;
        boolean allClosed = true;
        boolean ringClosed = false;
        double[] c = new double[6];
        for (PathIterator it = shape.getPathIterator(null, FLATNESS_MM); !it.isDone(); it.next()) {
            int segment = it.currentSegment(c);
            if (segment == PathIterator.SEG_CLOSE) {
                ringClosed = true;
                continue;
            }
            if (segment == PathIterator.SEG_MOVETO && count > 0) {
                allClosed &= ringClosed || count < 4;
                rings.add(Arrays.copyOf(points, count));
                count = 0;
            }
            if (segment == PathIterator.SEG_MOVETO) {
                ringClosed = false;
            }
            if (count + 2 > points.length) {
                points = Arrays.copyOf(points, 2 * points.length);
            }
            points[count++] = c[0];
            points[count++] = c[1];
        }
        if (count > 0) {
            allClosed &= ringClosed;
            rings.add(Arrays.copyOf(points, count));
        }
        return new ShapeOutline(List.copyOf(rings), allClosed && !rings.isEmpty(), shape.getBounds2D());
    }

    /** The rings: x0, y0, x1, y1 …; the first point is not repeated unless the path did so. Not to be changed. */
    public List<double[]> rings() {
        return rings;
    }

    /** Whether every ring was closed by the path itself. */
    public boolean closed() {
        return closed;
    }

    public Rectangle2D bounds() {
        return (Rectangle2D) bounds.clone();
    }

    /** Whether the point lies inside by the even-odd rule. */
    public boolean contains(double x, double y) {
        if (!bounds.contains(x, y)) {
            return false;
        }
        boolean inside = false;
        for (double[] ring : rings) {
            int n = ring.length / 2;
            for (int i = 0, j = n - 1; i < n; j = i++) {
                double yi = ring[2 * i + 1];
                double yj = ring[2 * j + 1];
                if (yi > y != yj > y && x < (ring[2 * j] - ring[2 * i]) * (y - yi) / (yj - yi) + ring[2 * i]) {
                    inside = !inside;
                }
            }
        }
        return inside;
    }

    /** Distance to the nearest point of the outline itself, inside or outside; infinite for an empty outline. */
    public double distance(double x, double y) {
        double best = Double.POSITIVE_INFINITY;
        for (double[] ring : rings) {
            int n = ring.length / 2;
            for (int i = 0, j = n - 1; i < n; j = i++) {
                best = Math.min(
                        best, Line2D.ptSegDistSq(ring[2 * j], ring[2 * j + 1], ring[2 * i], ring[2 * i + 1], x, y));
            }
        }
        return Math.sqrt(best);
    }

    /** Whether the point is within a distance of the bounds; a quick test before {@link #distance}. */
    boolean isNearBounds(double x, double y, double distance) {
        return x >= bounds.getMinX() - distance
                && x <= bounds.getMaxX() + distance
                && y >= bounds.getMinY() - distance
                && y <= bounds.getMaxY() + distance;
    }

    /** Area enclosed by the rings (shoelace formula), a ring inside another taken off; square units of the path. */
    public double area() {
        Geometry polygon = polygon();
        return polygon.getArea();
    }

    private double perimeter() {
        double sum = 0;
        for (double[] ring : rings) {
            int n = ring.length / 2;
            for (int i = 0, j = n - 1; i < n; j = i++) {
                sum += Math.hypot(ring[2 * i] - ring[2 * j], ring[2 * i + 1] - ring[2 * j + 1]);
            }
        }
        return sum;
    }

    /** The same as a geometry: even-odd union of its rings as drawn, perhaps invalid; empty if no ring has three points. */
    public Geometry polygon() {
        GeometryFactory factory = new GeometryFactory();
        Geometry whole = factory.createPolygon();
        for (double[] ring : rings) {
            if (ring.length >= 6) {
                Geometry part = factory.createPolygon(ring(factory, ring));
                whole = whole.isEmpty() ? part : whole.symDifference(part);
            }
        }
        return whole;
    }

    private static LinearRing ring(GeometryFactory factory, double[] ring) {
        int n = ring.length / 2;
        boolean repeated = ring[0] == ring[2 * n - 2] && ring[1] == ring[2 * n - 1] && n > 3;
        int distinct = repeated ? n - 1 : n;
        Coordinate[] points = new Coordinate[distinct + 1];
        for (int i = 0; i < distinct; i++) {
            points[i] = new Coordinate(ring[2 * i], ring[2 * i + 1]);
        }
        points[distinct] = points[0];
        return factory.createLinearRing(points);
    }
}
