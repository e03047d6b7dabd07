package quarterlight.ui.rust.draw;

import java.util.List;
import java.util.Optional;
import quarterlight.visit.annotation.PixelPoint;

/** Draws a point to what is near: a corner first, else the nearest place of an edge. Pure functions; pixels of the photo. */
final class Snap {
    private Snap() {}

    /** The nearest corner within a distance. */
    static Optional<PixelPoint> toCorner(PixelPoint p, List<List<PixelPoint>> rings, double within) {
        PixelPoint best = p;
        double least = within;
        boolean found = false;
        for (List<PixelPoint> ring : rings) {
            for (PixelPoint corner : ring) {
                double distance = distance(p, corner);
                if (distance <= least) {
                    least = distance;
                    best = corner;
                    found = true;
                }
            }
        }
        return found ? Optional.of(best) : Optional.empty();
    }

    /** The nearest place on an edge of closed rings within a distance. */
    static Optional<PixelPoint> toEdge(PixelPoint p, List<List<PixelPoint>> rings, double within) {
        PixelPoint best = p;
        double least = within;
        boolean found = false;
        for (List<PixelPoint> ring : rings) {
            for (int i = 0; i < ring.size(); i++) {
                PixelPoint foot = foot(p, ring.get(i), ring.get((i + 1) % ring.size()));
                double distance = distance(p, foot);
                if (distance <= least) {
                    least = distance;
                    best = foot;
                    found = true;
                }
            }
        }
        return found ? Optional.of(best) : Optional.empty();
    }

    /** A corner if one is near, else an edge, else the point itself. */
    static PixelPoint of(PixelPoint p, List<List<PixelPoint>> rings, double within) {
        return toCorner(p, rings, within).or(() -> toEdge(p, rings, within)).orElse(p);
    }

    /** The place of a segment that is nearest to a point. */
    static PixelPoint foot(PixelPoint p, PixelPoint a, PixelPoint b) {
        double dx = b.x() - a.x();
        double dy = b.y() - a.y();
        double length2 = dx * dx + dy * dy;
        if (length2 == 0) {
            return a;
        }
        double t = Math.max(0, Math.min(1, ((p.x() - a.x()) * dx + (p.y() - a.y()) * dy) / length2));
        return new PixelPoint(a.x() + t * dx, a.y() + t * dy);
    }

    static double distance(PixelPoint a, PixelPoint b) {
        return Math.hypot(a.x() - b.x(), a.y() - b.y());
    }
}
