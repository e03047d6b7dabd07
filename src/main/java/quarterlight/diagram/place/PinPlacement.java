package quarterlight.diagram.place;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where the discs of pins go: near their points, never on another disc or a value; crowded ones fan out. Pure; the same input
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
    private static final double LATTICE_STEP = 7;
    private static final double FIRST_ANGLE = -Math.PI / 4;

    private final List<Wish> wishes;
    private final Rectangle2D frame;
    private final List<Rectangle2D> taken;
    private final List<Placed> placed = new ArrayList<>();

    private PinPlacement(List<Wish> wishes, Rectangle2D frame, List<Rectangle2D> taken) {
        this.wishes = wishes;
        this.frame = frame;
        this.taken = taken;
    }

    /** A point that wants a disc, px. */
    public record Wish(int number, Point2D tip) {}

    /**
     * A disc that found its place, px.
     *
     * @param tip the exact point
     * @param center the middle of the disc
     */
    public record Placed(int number, Point2D tip, Point2D center) {
        public Rectangle2D bounds() {
            Rectangle2D r = new Rectangle2D.Double(center.getX() - DISC / 2, center.getY() - DISC / 2, DISC, DISC);
            r.add(tip);
            return Rectangles.grown(r, 2);
        }
    }

    /**
     * Places the wishes in their order. A disc that would lie on another, on a taken place or outside finds another place farther off; one
     * for which there is none anywhere is left out.
     *
     * @param frame where discs may lie, px
     * @param taken rectangles to stay off, with the leader too
     */
    public static List<Placed> place(List<Wish> wishes, Rectangle2D frame, List<Rectangle2D> taken) {
        PinPlacement placement = new PinPlacement(wishes, frame, taken);
        wishes.forEach(placement::place);
        return List.copyOf(placement.placed);
    }

    private void place(Wish wish) {
        Optional<Point2D> best = Optional.empty();
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
                        wish.tip().getX() + radius * Math.cos(angle), wish.tip().getY() + radius * Math.sin(angle));
                if (isOpen(center)) {
                    double cost = radius + seat * 0.1 + cost(center, wish);
                    if (cost < least) {
                        least = cost;
                        best = Optional.of(center);
                    }
                }
            }
        }
        best.or(() -> anywhere(wish)).ifPresent(center -> placed.add(new Placed(wish.number(), wish.tip(), center)));
    }

    /** The nearest open place of the whole frame. */
    private Optional<Point2D> anywhere(Wish wish) {
        Optional<Point2D> nearest = Optional.empty();
        for (double y = frame.getMinY() + DISC / 2; y <= frame.getMaxY() - DISC / 2; y += LATTICE_STEP) {
            for (double x = frame.getMinX() + DISC / 2; x <= frame.getMaxX() - DISC / 2; x += LATTICE_STEP) {
                Point2D center = new Point2D.Double(x, y);
                boolean nearer = nearest.map(
                                best -> wish.tip().distance(center) < wish.tip().distance(best))
                        .orElse(true);
                if (nearer && isOpen(center)) {
                    nearest = Optional.of(center);
                }
            }
        }
        return nearest;
    }

    private boolean isOpen(Point2D center) {
        Rectangle2D disc = new Rectangle2D.Double(center.getX() - DISC / 2, center.getY() - DISC / 2, DISC, DISC);
        return frame.contains(disc)
                && taken.stream().noneMatch(disc::intersects)
                && placed.stream().noneMatch(other -> other.center().distance(center) < APART);
    }

    private double cost(Point2D center, Wish wish) {
        double cost = 0;
        for (Placed other : placed) {
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
        Line2D leader = new Line2D.Double(wish.tip(), center);
        for (Rectangle2D rectangle : taken) {
            if (leader.intersects(rectangle) && !rectangle.contains(wish.tip())) {
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
