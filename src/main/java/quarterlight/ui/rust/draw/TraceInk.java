package quarterlight.ui.rust.draw;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import javax.swing.UIManager;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.rust.OutlineSizes;
import quarterlight.rust.plane.CoinScale;
import quarterlight.ui.kit.Format;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Palette;
import quarterlight.ui.kit.view.PhotoShapes;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.PhotoScale.Coin;
import quarterlight.visit.annotation.PhotoScale.KnownRectangle;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.annotation.Trace;

/** Draws outlines, scales and the cross-hair above a photo; every line has a halo, so that it is seen on any ground. */
final class TraceInk {
    private static final double HANDLE_PX = 4;
    private static final double CROSS_PX = 14;

    private final Graphics2D g;
    private final double unit;
    private final Palette palette = Look.palette();

    /** @param scale device pixels per pixel of the photo, which is the unit of {@code g} */
    TraceInk(Graphics2D g, double scale) {
        this.g = g;
        this.unit = 1 / scale;
    }

    void kept(Trace trace, boolean chosen) {
        Path2D path = PhotoShapes.path(trace.outline());
        line(path, chosen ? palette.accent() : palette.ink(), chosen ? 2 : 1.4, false);
        Rectangle2D box = path.getBounds2D();
        label(trace.kind().said(), box.getMinX(), box.getMinY() - 4 * unit);
    }

    /** The outline at its least and its greatest size, two standard deviations to either side; the likely one is drawn as it is. */
    void sizes(Outline outline, OutlineSizes sizes) {
        line(grown(outline, sizes.least()), palette.ink(), 1, true);
        line(grown(outline, sizes.greatest()), palette.ink(), 1, true);
    }

    private static Shape grown(Outline outline, double factor) {
        Path2D path = PhotoShapes.path(outline);
        Rectangle2D box = path.getBounds2D();
        AffineTransform about = AffineTransform.getTranslateInstance(box.getCenterX(), box.getCenterY());
        about.scale(factor, factor);
        about.translate(-box.getCenterX(), -box.getCenterY());
        return about.createTransformedShape(path);
    }

    /** A faint ground for what is drawn or chosen; left out where the colors of the photo are looked at. */
    void ground(Outline outline) {
        g.setColor(InkPalette.faint(palette.accent(), 40));
        g.fill(PhotoShapes.path(outline));
    }

    void draft(TraceDraft draft, Optional<Handle> held, Optional<PixelPoint> next, boolean handles) {
        draft.outline().ifPresent(outline -> {
            Path2D path = PhotoShapes.path(outline);
            line(path, palette.accent(), 2, false);
        });
        open(draft.open(), next.filter(p -> !draft.open().isEmpty()));
        if (handles) {
            for (int ring = Handle.OPEN; ring < draft.rings().size(); ring++) {
                handles(draft.points(ring), ring, held);
            }
        }
    }

    private void open(List<PixelPoint> points, Optional<PixelPoint> next) {
        if (points.isEmpty()) {
            return;
        }
        Path2D path = new Path2D.Double();
        path.moveTo(points.get(0).x(), points.get(0).y());
        points.stream().skip(1).forEach(p -> path.lineTo(p.x(), p.y()));
        line(path, palette.accent(), 2, false);
        PixelPoint last = points.get(points.size() - 1);
        next.ifPresent(p -> line(new Line2D.Double(last.x(), last.y(), p.x(), p.y()), palette.accent(), 1, true));
        double r = 1.8 * HANDLE_PX * unit;
        line(circle(points.get(0), r), palette.accent(), 1.5, false);
    }

    private void handles(List<PixelPoint> points, int ring, Optional<Handle> held) {
        for (int i = 0; i < points.size(); i++) {
            boolean taken = held.equals(Optional.of(new Handle(ring, i)));
            double r = (taken ? 1.6 : 1) * HANDLE_PX * unit;
            PixelPoint p = points.get(i);
            Shape square = new Rectangle2D.Double(p.x() - r, p.y() - r, 2 * r, 2 * r);
            g.setColor(taken ? palette.accent() : palette.sheet());
            g.fill(square);
            line(square, palette.accent(), 1.2, false);
        }
    }

    void scale(PhotoScale scale, Optional<Handle> held, boolean handles) {
        List<PixelPoint> marks = scale.marks();
        if (scale instanceof Coin coin) {
            CoinScale.ofRim(coin.rim(), coin.diameterMm()).ifPresent(e -> {
                AffineTransform t = AffineTransform.getTranslateInstance(
                        e.middle().x(), e.middle().y());
                t.rotate(e.majorRadians());
                line(
                        t.createTransformedShape(
                                new Ellipse2D.Double(-e.majorPx(), -e.minorPx(), 2 * e.majorPx(), 2 * e.minorPx())),
                        palette.ink(),
                        1.4,
                        true);
            });
        } else {
            line(ring(marks, scale instanceof KnownRectangle), palette.ink(), 1.4, true);
        }
        marks(marks);
        if (handles) {
            handles(marks, Handle.SCALE, held);
        }
        label(size(scale), marks.get(0).x() + 6 * unit, marks.get(0).y() - 6 * unit);
    }

    /** Marks of a scale while they are being set. */
    void marks(List<PixelPoint> marks) {
        for (PixelPoint p : marks) {
            double r = 6 * unit;
            line(new Line2D.Double(p.x() - r, p.y(), p.x() + r, p.y()), palette.ink(), 1.4, false);
            line(new Line2D.Double(p.x(), p.y() - r, p.x(), p.y() + r), palette.ink(), 1.4, false);
        }
    }

    void marksBeingSet(List<PixelPoint> marks, Optional<PixelPoint> next) {
        if (!marks.isEmpty()) {
            line(ring(marks, false), palette.ink(), 1.2, true);
            PixelPoint last = marks.get(marks.size() - 1);
            next.ifPresent(p -> line(new Line2D.Double(last.x(), last.y(), p.x(), p.y()), palette.ink(), 1, true));
        }
        marks(marks);
    }

    private static String size(PhotoScale scale) {
        ScaleKind wish = ScaleKind.of(scale);
        return switch (wish.shape()) {
            case LENGTH -> Format.withUnit(wish.widthMm(), 1, "mm");
            case RECTANGLE -> Format.number(wish.widthMm(), 1) + " \u00d7 " + Format.withUnit(wish.heightMm(), 1, "mm");
            case COIN -> "\u2300 " + Format.withUnit(wish.widthMm(), 2, "mm");
        };
    }

    void cross(PixelPoint p) {
        double r = CROSS_PX * unit;
        double gap = 3 * unit;
        line(new Line2D.Double(p.x() - r, p.y(), p.x() - gap, p.y()), palette.accent(), 1.5, false);
        line(new Line2D.Double(p.x() + gap, p.y(), p.x() + r, p.y()), palette.accent(), 1.5, false);
        line(new Line2D.Double(p.x(), p.y() - r, p.x(), p.y() - gap), palette.accent(), 1.5, false);
        line(new Line2D.Double(p.x(), p.y() + gap, p.x(), p.y() + r), palette.accent(), 1.5, false);
    }

    /** The rim of a brush. */
    void brush(PixelPoint p, double radius) {
        line(circle(p, radius), palette.ink(), 1.2, false);
    }

    private static Shape circle(PixelPoint p, double r) {
        return new Ellipse2D.Double(p.x() - r, p.y() - r, 2 * r, 2 * r);
    }

    private static Path2D ring(List<PixelPoint> points, boolean closed) {
        Path2D path = new Path2D.Double();
        path.moveTo(points.get(0).x(), points.get(0).y());
        points.stream().skip(1).forEach(p -> path.lineTo(p.x(), p.y()));
        if (closed) {
            path.closePath();
        }
        return path;
    }

    private void line(Shape shape, Color color, double px, boolean dashed) {
        g.setColor(InkPalette.faint(palette.sheet(), 210));
        g.setStroke(stroke(px + 2, false));
        g.draw(shape);
        g.setColor(color);
        g.setStroke(stroke(px, dashed));
        g.draw(shape);
    }

    private BasicStroke stroke(double px, boolean dashed) {
        float width = (float) (px * unit);
        if (!dashed) {
            return new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
        }
        float[] dash = {(float) (5 * unit), (float) (4 * unit)};
        return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dash, 0);
    }

    private void label(String words, double x, double y) {
        Font font = UIManager.getFont("defaultFont").deriveFont(Font.PLAIN, (float) (11 * unit));
        Shape text = font.createGlyphVector(g.getFontRenderContext(), words).getOutline((float) x, (float) y);
        g.setColor(InkPalette.faint(palette.sheet(), 230));
        g.setStroke(stroke(3, false));
        g.draw(text);
        g.setColor(palette.ink());
        g.fill(text);
    }
}
