package quarterlight.ui.kit.visit;

import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Locale;
import quarterlight.ui.kit.look.LineIcon;

/** The stations of the job in the order of the work; each has a name, a drawn sign and a key. */
public enum Station {
    PHOTOS(1),
    WORDS(7),
    GAUGE(2),
    RUST(3),
    MARKS(4),
    NOTES(5),
    PAGES(6);

    private final int digit;

    Station(int digit) {
        this.digit = digit;
    }

    /** Text key of the name. */
    public String textKey() {
        return "station." + name().toLowerCase(Locale.ROOT);
    }

    /** The digit that, with the menu key, opens the station. */
    public int digit() {
        return digit;
    }

    /** The sign of a station as an icon for the rail. */
    public static LineIcon sign(Station station) {
        return new LineIcon(station.sign(), 24);
    }

    /** The sign as lines within a square of 24 units. */
    private Shape sign() {
        return switch (this) {
            case PHOTOS ->
                joined(
                        box(3, 6, 14, 12),
                        line(8, 3.5, 21, 3.5, 21, 15),
                        circle(7.5, 10, 1.6),
                        line(4, 17, 9.5, 12.5, 12, 14.5, 14.5, 11.5, 17, 14.5));
            case WORDS ->
                joined(
                        line(3, 10, 3, 14),
                        line(6.5, 7, 6.5, 17),
                        line(10, 4, 10, 20),
                        line(13.5, 8, 13.5, 16),
                        line(17, 5.5, 17, 18.5),
                        line(20.5, 10, 20.5, 14));
            case GAUGE ->
                joined(
                        box(7, 3, 10, 12),
                        line(9.5, 6, 14.5, 6),
                        line(9.5, 9, 14.5, 9),
                        line(12, 15, 12, 19),
                        line(3, 21, 21, 21),
                        line(6, 19, 18, 19));
            case RUST ->
                joined(
                        line(3, 15, 6, 8, 12, 5, 18, 7, 21, 13, 17, 19, 9, 20, 3, 15),
                        circle(9, 13, 0.9),
                        circle(13, 10, 0.9),
                        circle(14, 15, 0.9),
                        circle(10, 17, 0.6),
                        circle(17, 12, 0.6));
            case MARKS ->
                joined(
                        box(3, 6, 18, 12),
                        circle(6, 12, 0.9),
                        circle(18, 12, 0.9),
                        line(9, 10, 9, 14),
                        line(12, 10, 12, 14),
                        line(15, 10, 15, 14));
            case NOTES ->
                joined(
                        line(5, 3, 19, 3, 19, 21, 5, 21, 5, 3),
                        line(8, 8, 16, 8),
                        line(8, 12, 16, 12),
                        line(8, 16, 13, 16));
            case PAGES ->
                joined(
                        line(4, 5, 14, 5, 14, 21, 4, 21, 4, 5),
                        line(8, 5, 8, 2, 20, 2, 20, 18, 14, 18),
                        line(6.5, 9, 11.5, 9),
                        line(6.5, 12, 11.5, 12));
        };
    }

    private static Shape joined(Shape... parts) {
        Path2D path = new Path2D.Double();
        for (Shape part : parts) {
            path.append(part, false);
        }
        return path;
    }

    private static Shape box(double x, double y, double w, double h) {
        return new Rectangle2D.Double(x, y, w, h);
    }

    private static Shape circle(double x, double y, double r) {
        return new Area(new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r));
    }

    private static Shape line(double... xy) {
        Path2D path = new Path2D.Double();
        path.moveTo(xy[0], xy[1]);
        for (int i = 2; i < xy.length; i += 2) {
            path.lineTo(xy[i], xy[i + 1]);
        }
        return path;
    }
}
