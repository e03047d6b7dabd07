package quarterlight.diagram.place;

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
 * Places one label per zone of a view without overlap: inside the zone where it fits, else outside with a leader, else, where the words
 * have a shorter stand-in, that one in the same way. Pure and deterministic. A label that finds no place is left out, not drawn over
 * another; the caller says so in a table.
 */
public final class LabelPlacement {
    private static final double PAD = 2;
    private static final double[] RINGS = {14, 22, 32, 44, 58, 74, 92, 115, 140, 170, 210, 260};
    private static final int DIRECTIONS = 16;
    private static final double MARGIN_STEP = 9;
    private static final double LATTICE_STEP = 6;
    /** Words with a stand-in stand outside only if their leader is about this short and crosses nothing, px. */
    private static final double MAX_COST = 45;
    /** What it costs words of this length or more to hide a part of the drawing, in px of leader. */
    private static final double MAX_COVER_COST = 150;

    private static final double LONG_PX = 48;
    /** Room for the dot at the point of a pin, px. */
    private static final double TIP = 3;
    /** How far a value outside its zone stays off the drawing, px. */
    private static final double CLEAR_PX = 3;

    /**
     * A label that wants a place, px.
     *
     * @param anchor the middle of the zone
     * @param width of the text
     * @param height of the text
     * @param spots centers to try inside, best first
     * @param holds whether a rectangle lies wholly inside the part of the zone that can be seen
     * @param shorter what stands for the text where it finds no good place
     * @param isValue whether it is a value: outside its zone it stands beside the car and never on another panel
     */
    public record Wish(
            ZoneId zone,
            String text,
            Point2D anchor,
            double width,
            double height,
            List<Point2D> spots,
            Predicate<Rectangle2D> holds,
            Optional<Shorter> shorter,
            boolean isValue) {
        /** The stand-in as a wish of its own. */
        Wish cut(Shorter by) {
            return new Wish(zone, by.text(), anchor, by.width(), by.height(), spots, holds, Optional.empty(), isValue);
        }

        public Rectangle2D at(Point2D center) {
            return new Rectangle2D.Double(center.getX() - width / 2, center.getY() - height / 2, width, height);
        }
    }

    /** Fewer letters for the same zone; sizes in px. */
    public record Shorter(String text, double width, double height) {}

    /** A label that found its place; a leader runs from it to the anchor unless it stands inside. */
    public record Placed(ZoneId zone, String text, Rectangle2D box, Point2D anchor, boolean inside) {
        /** Where the leader leaves the box: the nearest point of its edge. */
        public Point2D leaderStart() {
            double x = Math.min(box.getMaxX(), Math.max(box.getMinX(), anchor.getX()));
            double y = Math.min(box.getMaxY(), Math.max(box.getMinY(), anchor.getY()));
            return new Point2D.Double(x, y);
        }
    }

    /**
     * What labels share.
     *
     * @param frame where labels may lie, px
     * @param title where no label with a leader may lie, px
     * @param onCar whether a rectangle lies on the drawing; words with a leader prefer not to, values never do
     * @param tips points of pins; a value inside its zone leaves them open where it can
     */
    public record Room(Rectangle2D frame, Rectangle2D title, Predicate<Rectangle2D> onCar, List<Point2D> tips) {
        public Room {
            tips = List.copyOf(tips);
        }
    }

    private final Room room;
    private final List<Placed> placed;

    private LabelPlacement(Room room, List<Placed> before) {
        this.room = room;
        this.placed = new ArrayList<>(before);
    }

    /**
     * @param before what stands already and keeps its place
     * @return the labels that found a place, in the order of the wishes where inside, then those outside from left to right
     */
    public static List<Placed> place(List<Wish> wishes, Room room, List<Placed> before) {
        LabelPlacement placement = new LabelPlacement(room, before);
        placement.place(wishes);
        return List.copyOf(placement.placed.subList(before.size(), placement.placed.size()));
    }

    private void place(List<Wish> wishes) {
        List<Wish> outside = new ArrayList<>();
        for (Wish wish : wishes) {
            inside(wish).ifPresentOrElse(placed::add, () -> outside.add(wish));
        }
        outside.sort(Comparator.comparingDouble((Wish w) -> w.anchor().getX())
                .thenComparingDouble(w -> w.anchor().getY())
                .thenComparing(Wish::zone));
        List<Wish> cut = new ArrayList<>();
        for (Wish wish : outside) {
            double most = wish.shorter().isPresent() ? MAX_COST : Double.POSITIVE_INFINITY;
            outside(wish, most)
                    .ifPresentOrElse(placed::add, () -> wish.shorter().ifPresent(by -> cut.add(wish.cut(by))));
        }
        List<Wish> left = new ArrayList<>();
        for (Wish wish : cut) {
            inside(wish).ifPresentOrElse(placed::add, () -> left.add(wish));
        }
        for (Wish wish : left) {
            outside(wish, Double.POSITIVE_INFINITY).ifPresent(placed::add);
        }
    }

    /** A place inside that leaves all tips open, else one that does not. */
    private Optional<Placed> inside(Wish wish) {
        Optional<Placed> second = Optional.empty();
        for (Point2D spot : wish.spots()) {
            Rectangle2D box = wish.at(spot);
            if (wish.holds().test(Rectangles.grown(box, PAD)) && isFree(box)) {
                Placed found = new Placed(wish.zone(), wish.text(), box, spot, true);
                Rectangle2D open = Rectangles.grown(box, TIP);
                if (room.tips().stream().noneMatch(open::contains)) {
                    return Optional.of(found);
                }
                second = second.or(() -> Optional.of(found));
            }
        }
        return second;
    }

    private Optional<Placed> outside(Wish wish, double most) {
        Optional<Placed> near = cheapest(candidates(wish, room.frame()), wish, most);
        return near.isPresent() || most < Double.POSITIVE_INFINITY ? near : cheapest(lattice(room.frame()), wish, most);
    }

    private Optional<Placed> cheapest(List<Point2D> centers, Wish wish, double most) {
        Optional<Placed> best = Optional.empty();
        double least = most;
        for (Point2D center : centers) {
            Rectangle2D box = wish.at(center);
            if (!room.frame().contains(box) || room.title().intersects(box) || !isFree(box)) {
                continue;
            }
            Placed candidate = new Placed(wish.zone(), wish.text(), box, wish.anchor(), false);
            if (candidate.leaderStart().distance(candidate.anchor()) >= least) {
                continue; // the length alone costs more, so the rest need not be looked at
            }
            double cost = cost(candidate, wish.isValue());
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

    /** The whole room, for a label that found no place near its zone or at the margins. */
    private static List<Point2D> lattice(Rectangle2D frame) {
        List<Point2D> found = new ArrayList<>();
        for (double y = frame.getMinY(); y <= frame.getMaxY(); y += LATTICE_STEP) {
            for (double x = frame.getMinX(); x <= frame.getMaxX(); x += LATTICE_STEP) {
                found.add(new Point2D.Double(x, y));
            }
        }
        return found;
    }

    private double cost(Placed candidate, boolean value) {
        Point2D start = candidate.leaderStart();
        double cost = start.distance(candidate.anchor());
        Rectangle2D box = candidate.box();
        double across = value ? Double.POSITIVE_INFINITY : 200;
        if (room.onCar().test(Rectangles.grown(box, value ? CLEAR_PX : 0))) {
            cost += value ? Double.POSITIVE_INFINITY : MAX_COVER_COST * Math.min(1, box.getWidth() / LONG_PX);
        }
        Line2D leader = new Line2D.Double(start, candidate.anchor());
        for (Placed other : placed) {
            if (leader.intersects(Rectangles.grown(other.box(), 1))) {
                cost += across;
            }
            if (!other.inside()) {
                Line2D theirs = new Line2D.Double(other.leaderStart(), other.anchor());
                if (leader.intersectsLine(theirs)) {
                    cost += 80;
                }
                if (theirs.intersects(Rectangles.grown(box, 1))) {
                    cost += across;
                }
            }
        }
        return cost;
    }

    private boolean isFree(Rectangle2D box) {
        Rectangle2D grown = Rectangles.grown(box, PAD);
        return placed.stream().noneMatch(other -> other.box().intersects(grown));
    }
}
