package quarterlight.draw;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/** A flattened curve in car coordinates (mm), open or closed (first point = last point). Immutable. */
record Curve(List<Coordinate> points) {
    Curve {
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new DrawingFault("a curve needs at least two points");
        }
    }

    /** The other coordinate where the curve first crosses {@code where}; y at x, or x at y if {@code swap}. */
    double crossing(double where, boolean swap) {
        for (int i = 1; i < points.size(); i++) {
            Coordinate a = points.get(i - 1);
            Coordinate b = points.get(i);
            double a0 = swap ? a.y : a.x;
            double b0 = swap ? b.y : b.x;
            if (Math.min(a0, b0) <= where && where <= Math.max(a0, b0)) {
                double a1 = swap ? a.x : a.y;
                double b1 = swap ? b.x : b.y;
                return a0 == b0 ? a1 : a1 + (b1 - a1) * (where - a0) / (b0 - a0);
            }
        }
        throw new DrawingFault("the curve does not reach " + where);
    }

    /** The part of the curve between two x values, in the direction from the first to the second. */
    List<Coordinate> between(double from, double to) {
        double low = Math.min(from, to);
        double high = Math.max(from, to);
        List<Coordinate> out = new ArrayList<>();
        boolean rising = points.get(0).x <= points.get(points.size() - 1).x;
        out.add(new Coordinate(rising ? low : high, crossing(rising ? low : high, false)));
        for (Coordinate point : points) {
            if (point.x > low + 0.05 && point.x < high - 0.05) {
                out.add(point);
            }
        }
        out.add(new Coordinate(rising ? high : low, crossing(rising ? high : low, false)));
        if (rising != from <= to) {
            java.util.Collections.reverse(out);
        }
        return out;
    }
}
