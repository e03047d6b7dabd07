package quarterlight.demo;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;

/** Things that lie on a sheet: a ruler, a card of ISO/IEC 7810 size ID-1, the gauge, rivets, bolts. */
final class Things {
    static final double CARD_W_MM = 85.60;
    static final double CARD_H_MM = 53.98;
    private static final double CARD_CORNER_MM = 3.18;
    private final Relief s;
    private final Type type;

    Things(Relief s, Type type) {
        this.s = s;
        this.type = type;
    }

    /** A steel ruler with its zero line at (x, y); returns the ends of its scale: 0 and {@code mm}. */
    List<Point2D.Double> ruler(double x, double y, double degrees, double mm, double pxPerMm) {
        AffineTransform at = AffineTransform.getTranslateInstance(x, y);
        at.rotate(Math.toRadians(degrees));
        double k = pxPerMm;
        Shape body =
                at.createTransformedShape(new RoundRectangle2D.Double(-6 * k, 0, (mm + 14) * k, 19 * k, 3 * k, 3 * k));
        lay(body, 5, 0.6, new Stuff(Tint.hex("#c3c6c5"), 0.16, 0.5, 25), 3);
        Path2D ticks = new Path2D.Double();
        for (int i = 0; i <= mm; i++) {
            double length = i % 10 == 0 ? 7.5 : i % 5 == 0 ? 5.6 : 3.6;
            ticks.append(new Rectangle2D.Double(i * k - 0.09 * k, 0.2 * k, 0.18 * k, length * k), false);
        }
        s.cover(at.createTransformedShape(ticks), Stuff.dull("#15181a"), 0.2, 0.95);
        for (int i = 0; i <= mm; i += 10) {
            String label = Integer.toString(i / 10);
            double half = type.width(label, 5.2 * k) / 2;
            s.cover(
                    at.createTransformedShape(type.strong(label, i * k - half, 13.6 * k, 5.2 * k)),
                    Stuff.dull("#15181a"));
        }
        s.cover(at.createTransformedShape(type.plain("cm", 2.6 * k, 17.2 * k, 3.1 * k)), Stuff.dull("#3a3f42"));
        return List.of(at(at, 0, 0), at(at, mm * k, 0));
    }

    /** A white card with its top left corner at (x, y); returns the corners its straight edges meet in, first side 85.60. */
    List<Point2D.Double> card(double x, double y, double degrees, double pxPerMm) {
        AffineTransform at = AffineTransform.getTranslateInstance(x, y);
        at.rotate(Math.toRadians(degrees));
        double w = CARD_W_MM * pxPerMm;
        double h = CARD_H_MM * pxPerMm;
        double c = 2 * CARD_CORNER_MM * pxPerMm;
        Shape body = at.createTransformedShape(new RoundRectangle2D.Double(0, 0, w, h, c, c));
        lay(body, 4, 0.5, Stuff.plastic("#eceae3"), 3);
        double u = pxPerMm;
        Shape frame = at.createTransformedShape(Relief.stroke(
                new RoundRectangle2D.Double(4 * u, 4 * u, w - 8 * u, h - 8 * u, c * 0.5, c * 0.5), 0.5 * u));
        s.cover(frame, Stuff.dull("#0b6472"), 0.2, 0.9);
        s.cover(at.createTransformedShape(type.strong("SCALE CARD", 9 * u, 15 * u, 7 * u)), Stuff.dull("#20262b"));
        s.cover(
                at.createTransformedShape(type.plain("85.60 x 53.98 mm", 9 * u, 23 * u, 5.4 * u)),
                Stuff.dull("#20262b"));
        String[] greys = {"#1b1b1b", "#555555", "#8d8d8d", "#c4c4c4"};
        for (int i = 0; i < greys.length; i++) {
            s.cover(
                    at.createTransformedShape(new Rectangle2D.Double((9 + 10 * i) * u, 34 * u, 9 * u, 11 * u)),
                    Stuff.dull(greys[i]));
        }
        return List.of(at(at, 0, 0), at(at, w, 0), at(at, w, h), at(at, 0, h));
    }

    /** The thickness gauge lying or held on the sheet, its display showing {@code shown}. */
    void gauge(double x, double y, double degrees, double k, String shown, String unit) {
        AffineTransform at = AffineTransform.getTranslateInstance(x, y);
        at.rotate(Math.toRadians(degrees));
        Path2D body = new Path2D.Double();
        body.moveTo(-30 * k, -62 * k);
        body.curveTo(-32 * k, -72 * k, 32 * k, -72 * k, 30 * k, -62 * k);
        body.curveTo(34 * k, -10 * k, 29 * k, 30 * k, 20 * k, 66 * k);
        body.curveTo(14 * k, 74 * k, -14 * k, 74 * k, -20 * k, 66 * k);
        body.curveTo(-29 * k, 30 * k, -34 * k, -10 * k, -30 * k, -62 * k);
        body.closePath();
        Shape shell = at.createTransformedShape(body);
        s.shadow(shell, 9 * k, 12 * k, 9 * k, 0.55);
        s.clearShadow(shell);
        s.flatten(shell, 4 * k);
        s.raise(shell, 13 * k, 5 * k);
        s.cover(shell, new Stuff(Tint.hex("#34393c"), 0.035, 0, 18));
        s.rough(shell, 0.5, 2.2, 2);
        Shape waist =
                at.createTransformedShape(new RoundRectangle2D.Double(-27 * k, 8 * k, 54 * k, 3.4 * k, 3 * k, 3 * k));
        s.cover(waist, Stuff.plastic("#c86a1e"), 0.6, 1);
        Shape frame =
                at.createTransformedShape(new RoundRectangle2D.Double(-25 * k, -58 * k, 50 * k, 56 * k, 8 * k, 8 * k));
        s.cover(frame, Stuff.plastic("#101315"), 0.5, 1);
        Shape window =
                at.createTransformedShape(new RoundRectangle2D.Double(-22 * k, -48 * k, 44 * k, 32 * k, 3 * k, 3 * k));
        s.flatten(frame, 15 * k);
        s.cover(window, new Stuff(Tint.hex("#a9b59a"), 0.05, 0, 120), 0.4, 1);
        double room = Type.display(shown, 0, 0, 19 * k).getBounds2D().getWidth();
        s.cover(
                at.createTransformedShape(Type.display(shown, -room / 2, -43 * k, 19 * k)),
                Stuff.dull("#14201a"),
                0.2,
                0.95);
        s.cover(
                at.createTransformedShape(type.strong(unit, 9 * k, -17.8 * k, 6 * k)),
                Stuff.dull("#14201a"),
                0.2,
                0.95);
        for (int i = -1; i <= 1; i += 2) {
            Shape button = at.createTransformedShape(Relief.disc(i * 11 * k, 28 * k, 6 * k));
            s.raise(button, 2.2 * k, 1.2 * k);
            s.cover(button, Stuff.rubber(), 0.5, 1);
        }
    }

    void rivet(double x, double y, double radius, Stuff stuff) {
        Shape dome = Relief.disc(x, y, radius);
        s.shadow(dome, radius * 0.3, radius * 0.4, radius * 0.3, 0.35);
        s.clearShadow(dome);
        s.cover(dome, stuff, 0.5, 1);
        s.raise(dome, radius * 0.75, radius * 0.28);
        s.dye(Relief.stroke(Relief.disc(x, y, radius * 1.04), radius * 0.14), "#1a1815", 0.8, 0.5);
    }

    /** A hexagon head on a washer. */
    void bolt(double x, double y, double radius, double degrees, Stuff stuff) {
        Shape washer = Relief.disc(x, y, radius * 1.5);
        s.shadow(washer, radius * 0.5, radius * 0.6, radius * 0.4, 0.45);
        s.clearShadow(washer);
        s.cover(washer, stuff);
        s.raise(washer, radius * 0.35, 1.2);
        Path2D hex = new Path2D.Double();
        for (int i = 0; i < 6; i++) {
            double a = Math.toRadians(degrees + 60 * i);
            if (i == 0) {
                hex.moveTo(x + radius * Math.cos(a), y + radius * Math.sin(a));
            } else {
                hex.lineTo(x + radius * Math.cos(a), y + radius * Math.sin(a));
            }
        }
        hex.closePath();
        s.shadow(hex, radius * 0.3, radius * 0.4, radius * 0.25, 0.5);
        s.clearShadow(hex);
        s.raise(hex, radius * 0.8, 1.4);
    }

    /** Lays a flat thing of some height on the sheet with its shadow. */
    void lay(Shape body, double height, double soft, Stuff stuff, double shadow) {
        s.shadow(body, shadow, shadow * 1.5, shadow, 0.45);
        s.clearShadow(body);
        s.flatten(body, height);
        s.raise(body, 0.01, soft);
        s.cover(body, stuff);
    }

    private static Point2D.Double at(AffineTransform t, double x, double y) {
        Point2D.Double p = new Point2D.Double(x, y);
        t.transform(p, p);
        return p;
    }
}
