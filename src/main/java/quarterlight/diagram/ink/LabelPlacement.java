package quarterlight.diagram.ink;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import quarterlight.car.ZoneId;

/**
 * Places one label per zone of a view without overlap: inside the zone where it fits, else outside with a leader. Pure and deterministic.
 * A label that finds no place is left out, not drawn over another; the caller says so in a table.
 */
final class LabelPlacement {
    private static final double PAD = 2;
    private static final double[] RINGS = {14, 22, 32, 44, 58, 74, 92, 115, 140, 170, 210, 260};
    private static final int DIRECTIONS = 16;
    private static final double MARGIN_STEP = 9;

    private LabelPlacement() {}

    /**
     * A label that wants a place, px.
     *
     * @param anchor the middle of the zone
     * @param width of the text
     * @param height of the text
     * @param spots centers to try inside, best first
     * @param holds whether a rectangle lies wholly inside the part of the zone that can be seen
     */
    record Wish(
            ZoneId zone,
            String text,
            Point2D anchor,
            double width,
            double height,
            List<Point2D> spots,
            Predicate<Rectangle2D> holds) {
        Rectangle2D at(Point2D center) {
            return new Rectangle2D.Double(center.getX() - width / 2, center.getY() - height / 2, width, height);
        }
    }

    /** A label that found its place; a leader runs from it to the anchor unless it stands inside. */
    record Placed(ZoneId zone, String text, Rectangle2D box, Point2D anchor, boolean inside) {
        /** Where the leader leaves the box: the nearest point of its edge. */
        Point2D leaderStart() {
            double x = Math.min(box.getMaxX(), Math.max(box.getMinX(), anchor.getX()));
            double y = Math.min(box.getMaxY(), Math.max(box.getMinY(), anchor.getY()));
            return new Point2D.Double(x, y);
        }
    }

    /**
     * @param frame where labels may lie, px
     * @param title where no label with a leader may lie, px
     * @param onCar whether a point lies on the drawing; labels with a leader prefer not to
     * @return the labels that found a place, in the order of the wishes where inside, then those outside from left to right
     */
    static List<Placed> place(List<Wish> wishes, Rectangle2D frame, Rectangle2D title, Predicate<Point2D> onCar) {
        List<Placed> placed = new ArrayList<>();
        List<Wish> outside = new ArrayList<>();
        for (Wish wish : wishes) {
            Optional<Placed> inside = inside(wish, placed);
            inside.ifPresentOrElse(placed::add, () -> outside.add(wish));
        }
        outside.sort(Comparator.comparingDouble((Wish w) -> w.anchor().getX())
                .thenComparingDouble(w -> w.anchor().getY())
                .thenComparing(Wish::zone));
        for (Wish wish : outside) {
            outside(wish, placed, frame, title, onCar).ifPresent(placed::add);
        }
        return List.copyOf(placed);
    }

    private static Optional<Placed> inside(Wish wish, List<Placed> placed) {
        for (Point2D spot : wish.spots()) {
            Rectangle2D box = wish.at(spot);
            if (wish.holds().test(Drawn.grown(box, PAD)) && isFree(box, placed)) {
                return Optional.of(new Placed(wish.zone(), wish.text(), box, spot, true));
            }
        }
        return Optional.empty();
    }

    private static Optional<Placed> outside(
            Wish wish, List<Placed> placed, Rectangle2D frame, Rectangle2D title, Predicate<Point2D> onCar) {
        Optional<Placed> best = Optional.empty();
        double least = Double.POSITIVE_INFINITY;
        for (Point2D center : candidates(wish, frame)) {
            Rectangle2D box = wish.at(center);
            if (!frame.contains(box) || title.intersects(box) || !isFree(box, placed)) {
                continue;
            }
            Placed candidate = new Placed(wish.zone(), wish.text(), box, wish.anchor(), false);
            double cost = cost(candidate, placed, onCar);
            if (cost < least) {
                least = cost;
                best = Optional.of(candidate);
            }
        }
        return best;
    }

    private static List<Point2D> candidates(Wish wish, Rectangle2D frame) {
        List<Point2D> found = new ArrayList<>();
        double ax = wish.anchor().getX();
        double ay = wish.anchor().getY();
        for (double ring : RINGS) {
            for (int i = 0; i < DIRECTIONS; i++) {
                double angle = 2 * Math.PI * i / DIRECTIONS;
                double dx = Math.cos(angle);
                double dy = Math.sin(angle);
                found.add(
                        new Point2D.Double(ax + dx * (ring + wish.width() / 2), ay + dy * (ring + wish.height() / 2)));
            }
        }
        double upper = frame.getMinY() + wish.height() / 2;
        double lower = frame.getMaxY() - wish.height() / 2;
        for (double x = frame.getMinX() + wish.width() / 2; x <= frame.getMaxX(); x += MARGIN_STEP) {
            found.add(new Point2D.Double(x, upper));
            found.add(new Point2D.Double(x, lower));
            found.add(new Point2D.Double(x, upper + wish.height() + PAD));
            found.add(new Point2D.Double(x, lower - wish.height() - PAD));
        }
        return found;
    }

    private static double cost(Placed candidate, List<Placed> placed, Predicate<Point2D> onCar) {
        Point2D start = candidate.leaderStart();
        double cost = start.distance(candidate.anchor());
        Rectangle2D box = candidate.box();
        boolean covers = onCar.test(new Point2D.Double(box.getMinX(), box.getCenterY()))
                || onCar.test(new Point2D.Double(box.getCenterX(), box.getMinY()))
                || onCar.test(new Point2D.Double(box.getCenterX(), box.getMaxY()))
                || onCar.test(new Point2D.Double(box.getMaxX(), box.getCenterY()));
        if (covers) {
            cost += 150;
        }
        Line2D leader = new Line2D.Double(start, candidate.anchor());
        for (Placed other : placed) {
            if (leader.intersects(Drawn.grown(other.box(), 1))) {
                cost += 200;
            }
            if (!other.inside()) {
                Line2D theirs = new Line2D.Double(other.leaderStart(), other.anchor());
                if (leader.intersectsLine(theirs)) {
                    cost += 80;
                }
                if (theirs.intersects(Drawn.grown(box, 1))) {
                    cost += 200;
                }
            }
        }
        return cost;
    }

    private static boolean isFree(Rectangle2D box, List<Placed> placed) {
        Rectangle2D grown = Drawn.grown(box, PAD);
        return placed.stream().noneMatch(other -> other.box().intersects(grown));
    }
}
