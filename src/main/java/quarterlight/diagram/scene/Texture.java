package quarterlight.diagram.scene;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.util.Arrays;
import java.util.stream.DoubleStream;

/**
 * Hatching and stipple as plain lines and dots cut to a shape, so that a page keeps them sharp and a print without color still reads.
 * Spacing is in px and does not depend on the size of the shape. Even-odd inside.
 */
final class Texture {
    /** Width of a hatching line, px. */
    static final double LINE = 0.8;
    /** Diameter of a dot, px. */
    static final double DOT = 1.8;

    /** Width of a band, px. */
    static final double BAND = 3.4;

    private static final double BAND_STEP_PX = 9;
    private static final double HOLE_PX = 2.7;
    private static final double HOLE_STEP_PX = 9.5;
    private static final double MIN_HOLE_STEP_PX = 4.5;
    private static final double[] HATCH_PX = {0, 12, 8, 5.4, 3.6};
    private static final double[] STIPPLE_PX = {0, 13, 9.5, 7, 5.2, 3.8};
    private static final double FLATNESS_PX = 0.3;
    private static final double MIN_PX = 0.05;

    private Texture() {}

    /** Lines rising to the right at 45 degrees; empty at density 0. */
    static Path2D hatch(Shape shape, int density) {
        return density == 0 ? new Path2D.Double() : rising(shape, HATCH_PX[density]);
    }

    /** The middles of broad bands, far enough apart that they and what lies between look alike. */
    static Path2D bands(Shape shape) {
        return rising(shape, BAND_STEP_PX);
    }

    /** Large round holes in staggered rows; at least two rows even in a narrow strip. */
    static Path2D holes(Shape shape) {
        double high = shape.getBounds2D().getHeight();
        double step = Math.min(HOLE_STEP_PX, Math.max(MIN_HOLE_STEP_PX, high / 2.2));
        double r = Math.min(HOLE_PX, 0.34 * step);
        Path2D.Double holes = new Path2D.Double();
        eachSpan(shape, new AffineTransform(), step, (y, from, to, row) -> {
            double shift = Math.floorMod(row, 2L) * HOLE_STEP_PX / 2;
            double first = Math.ceil((from + r - shift) / HOLE_STEP_PX) * HOLE_STEP_PX + shift;
            for (double x = first; x <= to - r; x += HOLE_STEP_PX) {
                if (shape.contains(x, y - r) && shape.contains(x, y + r)) {
                    holes.append(new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r), false);
                }
            }
        });
        return holes;
    }

    private static Path2D rising(Shape shape, double step) {
        Path2D.Double lines = new Path2D.Double();
        AffineTransform turn = AffineTransform.getRotateInstance(Math.PI / 4);
        AffineTransform back = AffineTransform.getRotateInstance(-Math.PI / 4);
        eachSpan(shape, turn, step, (y, from, to, row) -> {
            Point2D a = back.transform(new Point2D.Double(from, y), null);
            Point2D b = back.transform(new Point2D.Double(to, y), null);
            lines.moveTo(a.getX(), a.getY());
            lines.lineTo(b.getX(), b.getY());
        });
        return lines;
    }

    /** Centers of dots in staggered rows, x and y in turn; none at density 0. */
    static double[] stipple(Shape shape, int density) {
        if (density == 0) {
            return new double[0];
        }
        double step = STIPPLE_PX[density];
        DoubleStream.Builder centers = DoubleStream.builder();
        eachSpan(shape, new AffineTransform(), step * Math.sqrt(3) / 2, (y, from, to, row) -> {
            double shift = Math.floorMod(row, 2L) * step / 2;
            for (double x = Math.ceil((from + DOT / 2 - shift) / step) * step + shift; x <= to - DOT / 2; x += step) {
                centers.add(x).add(y);
            }
        });
        return centers.build().toArray();
    }

    /** The dots as a path: octagons small enough to look round. */
    static Path2D path(DrawnItem.Dots dots) {
        Path2D.Double path = new Path2D.Double();
        for (int i = 0; i < dots.count(); i++) {
            dot(path, dots.x(i), dots.y(i));
        }
        return path;
    }

    private static void dot(Path2D path, double x, double y) {
        double r = DOT / 2;
        double d = r * Math.sqrt(0.5);
        path.moveTo(x + r, y);
        path.lineTo(x + d, y + d);
        path.lineTo(x, y + r);
        path.lineTo(x - d, y + d);
        path.lineTo(x - r, y);
        path.lineTo(x - d, y - d);
        path.lineTo(x, y - r);
        path.lineTo(x + d, y - d);
        path.closePath();
    }

    private interface Span {
        void cut(double y, double from, double to, long row);
    }

    /** Calls back for every piece of the lines y = row times step that lies inside the shape. */
    private static void eachSpan(Shape shape, AffineTransform turn, double step, Span span) {
        double[] edges = edges(shape, turn);
        double top = Double.POSITIVE_INFINITY;
        double bottom = Double.NEGATIVE_INFINITY;
        for (int i = 1; i < edges.length; i += 2) {
            top = Math.min(top, edges[i]);
            bottom = Math.max(bottom, edges[i]);
        }
        double[] cuts = new double[edges.length / 4];
        for (long row = (long) Math.ceil(top / step); row * step < bottom; row++) {
            double y = row * step;
            int n = 0;
            for (int i = 0; i < edges.length; i += 4) {
                double y0 = edges[i + 1];
                double y1 = edges[i + 3];
                if (y0 > y != y1 > y) {
                    cuts[n++] = edges[i] + (edges[i + 2] - edges[i]) * (y - y0) / (y1 - y0);
                }
            }
            Arrays.sort(cuts, 0, n);
            for (int i = 0; i + 1 < n; i += 2) {
                if (cuts[i + 1] - cuts[i] > MIN_PX) {
                    span.cut(y, cuts[i], cuts[i + 1], row);
                }
            }
        }
    }

    /** The edges of a shape, four numbers each, every ring closed. */
    private static double[] edges(Shape shape, AffineTransform turn) {
        double[] edges = new double[256];
        int n = 0;
        double[] c = new double[6];
        double startX = 0;
        double startY = 0;
        double x = 0;
        double y = 0;
        for (PathIterator it = shape.getPathIterator(turn, FLATNESS_PX); ; it.next()) {
            boolean done = it.isDone();
            int segment = done ? PathIterator.SEG_MOVETO : it.currentSegment(c);
            boolean line = segment == PathIterator.SEG_LINETO;
            if (n + 4 > edges.length) {
                edges = Arrays.copyOf(edges, 2 * edges.length);
            }
            edges[n++] = x;
            edges[n++] = y;
            edges[n++] = line ? c[0] : startX;
            edges[n++] = line ? c[1] : startY;
            if (done) {
                return Arrays.copyOf(edges, n);
            }
            if (segment == PathIterator.SEG_MOVETO) {
                startX = c[0];
                startY = c[1];
            }
            x = line || segment == PathIterator.SEG_MOVETO ? c[0] : startX;
            y = line || segment == PathIterator.SEG_MOVETO ? c[1] : startY;
            if (n == 4 && segment == PathIterator.SEG_MOVETO) {
                n = 0;
            }
        }
    }
}
