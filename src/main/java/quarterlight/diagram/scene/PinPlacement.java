package quarterlight.diagram.scene;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the discs of pins go: near their points, without covering a point or another disc; crowded ones fan out. Pure; the same input
 * gives the same places, and an earlier pin never moves because of a later one in another part of the sheet.
 */
public final class PinPlacement {
    /** Diameter of a disc, px. */
    public static final double DISC = 18;

    private static final double APART = DISC + 2;
    private static final double CLEAR = DISC / 2 + 3;
    private static final double FIRST_RING = 17;
    private static final double RING_STEP = 11;
    private static final int RINGS = 22;
    private static final double FIRST_ANGLE = -Math.PI / 4;

    private PinPlacement() {}

    /** A point that wants a disc, px. */
    public record Wish(int number, Point2D tip) {}

    /**
     * A disc that found its place, px.
     *
     * @param tip the exact point
     * @param center the middle of the disc
     */
    public record Placed(int number, Point2D tip, Point2D center) {
        Rectangle2D bounds() {
            Rectangle2D r = new Rectangle2D.Double(center.getX() - DISC / 2, center.getY() - DISC / 2, DISC, DISC);
            r.add(tip);
            return Drawn.grown(r, 2);
        }
    }

    /**
     * Places every wish, in its order.
     *
     * @param frame where discs may lie, px
     * @param taken rectangles to stay off, px
     */
    public static List<Placed> place(List<Wish> wishes, Rectangle2D frame, List<Rectangle2D> taken) {
        List<Placed> placed = new ArrayList<>();
        for (Wish wish : wishes) {
            Point2D best = wish.tip();
            double least = Double.POSITIVE_INFINITY;
            for (int ring = 0; ring < RINGS; ring++) {
                double radius = FIRST_RING + ring * RING_STEP;
                if (radius >= least) {
                    break;
                }
                int seats = Math.max(8, (int) (2 * Math.PI * radius / (APART / 2)));
                for (int seat = 0; seat < seats; seat++) {
                    // seats alternate to both sides of the first angle, so that a crowd opens like a fan
                    double angle = FIRST_ANGLE + (seat % 2 == 0 ? 1 : -1) * ((seat + 1) / 2) * 2 * Math.PI / seats;
                    Point2D center = new Point2D.Double(
                            wish.tip().getX() + radius * Math.cos(angle),
                            wish.tip().getY() + radius * Math.sin(angle));
                    double cost = radius + seat * 0.1 + cost(center, wish, wishes, placed, frame, taken);
                    if (cost < least) {
                        least = cost;
                        best = center;
                    }
                }
            }
            placed.add(new Placed(wish.number(), wish.tip(), best));
        }
        return List.copyOf(placed);
    }

    private static double cost(
            Point2D center,
            Wish wish,
            List<Wish> wishes,
            List<Placed> placed,
            Rectangle2D frame,
            List<Rectangle2D> taken) {
        double cost = 0;
        Rectangle2D inner = Drawn.grown(frame, -DISC / 2);
        if (!inner.contains(center)) {
            cost += 10_000;
        }
        for (Placed other : placed) {
            if (other.center().distance(center) < APART) {
                cost += 5_000;
            }
            if (crosses(wish.tip(), center, other.tip(), other.center())) {
                cost += 40;
            }
            if (Line2D.ptSegDist(
                            wish.tip().getX(),
                            wish.tip().getY(),
                            center.getX(),
                            center.getY(),
                            other.center().getX(),
                            other.center().getY())
                    < DISC / 2) {
                cost += 60;
            }
        }
        for (Wish other : wishes) {
            if (other.tip().distance(center) < CLEAR) {
                cost += 300;
            }
        }
        Rectangle2D disc = new Rectangle2D.Double(center.getX() - DISC / 2, center.getY() - DISC / 2, DISC, DISC);
        for (Rectangle2D rectangle : taken) {
            if (rectangle.intersects(disc)) {
                cost += 400;
            }
        }
        return cost;
    }

    private static boolean crosses(Point2D a, Point2D b, Point2D c, Point2D d) {
        return !a.equals(c)
                && Line2D.linesIntersect(
                        a.getX(), a.getY(), b.getX(), b.getY(), c.getX(), c.getY(), d.getX(), d.getY());
    }
}
