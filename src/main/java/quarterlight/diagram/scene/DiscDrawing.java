package quarterlight.diagram.scene;

import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quarterlight.diagram.ink.ColorContrast;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.diagram.ink.TextMeasure;
import quarterlight.diagram.place.PinPlacement;

/** Draws the disc of a pin with its leader and the dot at its point, which stays off values. */
final class DiscDrawing {
    private static final double DOT = 2;
    private static final int STEPS = 48;

    private DiscDrawing() {}

    /** @param taken values that neither leader nor dot may cross */
    static List<DrawnItem> draw(
            String number, PinPlacement.Placed pin, List<Rectangle2D> taken, InkPalette palette, TextMeasure measure) {
        List<DrawnItem> drawn = new ArrayList<>();
        Optional<Point2D> tip = visibleTip(pin.tip(), pin.center(), taken);
        tip.ifPresent(
                end -> drawn.add(DrawnItem.Stroked.of(new Line2D.Double(end, pin.center()), palette.accent(), 1)));
        tip.filter(end -> end.equals(pin.tip()))
                .ifPresent(end -> drawn.add(DrawnItem.Filled.of(
                        new Ellipse2D.Double(end.getX() - DOT, end.getY() - DOT, 2 * DOT, 2 * DOT), palette.accent())));
        drawn.addAll(disc(number, pin.center().getX(), pin.center().getY(), palette, measure));
        return drawn;
    }

    /** One disc with its number. */
    static List<DrawnItem> disc(String number, double x, double y, InkPalette palette, TextMeasure measure) {
        double r = PinPlacement.DISC / 2;
        Ellipse2D disc = new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r);
        double size = number.length() > 2 ? 9 : 11;
        double width = measure.width(number, size, true);
        return List.of(
                DrawnItem.Filled.of(disc, palette.accent()),
                DrawnItem.Stroked.of(disc, palette.ground(), 1),
                new DrawnItem.Words(
                        number,
                        x - width / 2,
                        y + 0.35 * size,
                        size,
                        true,
                        ColorContrast.readable(palette.accent(), palette.ground(), palette.ink()),
                        width));
    }

    /**
     * How far the leader of a disc can run to its point without crossing a value: the point itself, else the last place before the first value
     * on the way; empty if there is none.
     */
    static Optional<Point2D> visibleTip(Point2D tip, Point2D center, List<Rectangle2D> taken) {
        Rectangle2D dot = new Rectangle2D.Double(tip.getX() - DOT, tip.getY() - DOT, 2 * DOT, 2 * DOT);
        Line2D whole = new Line2D.Double(tip, center);
        List<Rectangle2D> inTheWay = taken.stream()
                .filter(box -> whole.intersects(box) || box.intersects(dot))
                .toList();
        if (inTheWay.isEmpty()) {
            return Optional.of(tip);
        }
        Optional<Point2D> last = Optional.empty();
        for (int i = 0; i < STEPS; i++) {
            double share = (double) i / STEPS;
            Point2D next = new Point2D.Double(
                    center.getX() + share * (tip.getX() - center.getX()),
                    center.getY() + share * (tip.getY() - center.getY()));
            if (inTheWay.stream().anyMatch(box -> DrawnItem.grown(box, 1).contains(next))) {
                return last;
            }
            last = Optional.of(next);
        }
        return last;
    }
}
