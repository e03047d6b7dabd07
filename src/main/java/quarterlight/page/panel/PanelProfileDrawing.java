package quarterlight.page.panel;

import static quarterlight.language.Sentences.figure;
import static quarterlight.language.Sentences.say;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.diagram.ink.TextMeasure;
import quarterlight.page.panel.PanelProfile.Point;
import quarterlight.thickness.spot.SpotKind;
import quarterlight.units.ThicknessUnit;

/**
 * Draws a panel from its edge: below its outline with the places where the gauge stood, above them, to the same width, the coating on
 * the metal at each place from 0 up. The band is the car's factory level, one standard deviation to either side; crossed circles
 * stand apart, squares on the metal are spots without metal, arrows lie beyond the range, small crosses are excluded. Spots whose
 * place is not known stand at the right. One unit is one px; 400 to 900 px of width read well. Immutable.
 */
public final class PanelProfileDrawing {
    private static final double AXIS = 34;
    private static final double ASIDE = 74;
    private static final double HEAD = 22;
    private static final double METAL = 7;
    private static final double GAP = 20;
    private static final double FOOT = 20;
    private static final double RADIUS = 4.2;
    private static final double SMALL = 11;
    private static final double BAND_SHARE = 0.14;
    private static final double MIN_STEP_PX = 26;

    /**
     * How high the parts are drawn.
     *
     * @param coatingPx from the metal to the top of the scale
     * @param outlinePx the panel below it, at most
     */
    public record Room(double coatingPx, double outlinePx) {
        public static final Room WINDOW = new Room(132, 150);
        public static final Room PAGE = new Room(76, 64);
    }

    private final PanelProfile profile;
    private final ThicknessUnit unit;
    private final InkPalette palette;
    private final TextMeasure measure;
    private final double width;
    private final double height;
    private final double scale;
    private final double left;
    private final double top;
    private final double most;

    /** @param widthPx width of the whole drawing, 300 or more */
    public PanelProfileDrawing(
            PanelProfile profile,
            ThicknessUnit unit,
            InkPalette palette,
            TextMeasure measure,
            double widthPx,
            Room parts) {
        this.profile = Objects.requireNonNull(profile, "profile");
        this.unit = Objects.requireNonNull(unit, "unit");
        this.palette = Objects.requireNonNull(palette, "palette");
        this.measure = Objects.requireNonNull(measure, "measure");
        if (!(widthPx >= 300)) {
            throw new IllegalArgumentException("a panel's profile needs 300 px of width, not " + widthPx);
        }
        this.width = widthPx;
        this.height = parts.coatingPx();
        Rectangle2D bounds = profile.bounds();
        double room = plotWidth();
        this.scale =
                Math.min(room / Math.max(1, bounds.getWidth()), parts.outlinePx() / Math.max(1, bounds.getHeight()));
        this.left = AXIS + (room - scale * bounds.getWidth()) / 2 - scale * bounds.getMinX();
        this.top = HEAD + height + METAL + GAP - scale * bounds.getMinY();
        this.most = most();
    }

    private double plotWidth() {
        return width - AXIS - 14 - (profile.elsewhere().isEmpty() ? 0 : ASIDE);
    }

    /** The top of the scale in the unit shown: a little above everything drawn. */
    private double most() {
        List<Point> all = new ArrayList<>(profile.points());
        all.addAll(profile.elsewhere());
        double um =
                all.stream().flatMapToDouble(point -> point.um().stream()).max().orElse(profile.levelUm());
        return unit.fromUm(1.12 * Math.max(um, profile.levelUm() + profile.levelSdUm()));
    }

    public double widthPx() {
        return width;
    }

    public double heightPx() {
        return HEAD + height + METAL + GAP + scale * profile.bounds().getHeight() + FOOT;
    }

    /** What it shows, for those who do not see it. */
    public String words() {
        return profile.points().stream()
                .filter(point -> !point.excluded())
                .sorted(Comparator.comparing(Point::xMm))
                .map(point -> say(
                        "diagram.panel-profile-drawing.mm", Math.round(point.xMm() - profile.fromMm()), words(point)))
                .collect(Collectors.joining("; "));
    }

    private String words(Point point) {
        return switch (point.kind()) {
            case VALUE -> number(point.um().orElse(0)) + " " + unitName();
            case NO_METAL -> say("diagram.panel-profile-drawing.no-metal");
            case OVER -> say("diagram.panel-profile-drawing.beyond-the-range");
        };
    }

    /** Draws with its upper left corner at 0, 0; the ground is not painted. */
    public void draw(Graphics2D to) {
        Graphics2D g = (Graphics2D) to.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        band(g);
        axis(g);
        outline(g);
        List<Point> inOrder = new ArrayList<>(profile.points());
        inOrder.sort(Comparator.comparing(Point::xMm));
        inOrder.forEach(point -> leader(g, point));
        double free = 0;
        for (Point point : inOrder) {
            free = point(g, point, x(point), free);
        }
        aside(g);
        g.dispose();
    }

    private double x(Point point) {
        return left + scale * point.xMm();
    }

    private double y(double um) {
        return HEAD + height * (1 - Math.min(1, Math.max(0, unit.fromUm(um) / most)));
    }

    private void band(Graphics2D g) {
        double high = y(profile.levelUm() + profile.levelSdUm());
        double low = y(Math.max(0, profile.levelUm() - profile.levelSdUm()));
        g.setColor(InkPalette.mix(palette.accent(), palette.ground(), BAND_SHARE));
        g.fill(new Rectangle2D.Double(AXIS, high, width - AXIS, Math.max(2, low - high)));
        g.setColor(palette.accent());
        g.setStroke(new BasicStroke(1));
        g.draw(new Line2D.Double(AXIS, y(profile.levelUm()), width, y(profile.levelUm())));
    }

    private void axis(Graphics2D g) {
        double step = step();
        for (double value = 0; value <= most; value += step) {
            double y = HEAD + height * (1 - value / most);
            g.setColor(palette.line());
            g.setStroke(new BasicStroke(0.7f));
            g.draw(new Line2D.Double(AXIS, y, width, y));
            String words = String.format(Locale.US, step < 1 ? "%.1f" : "%.0f", value);
            text(g, words, AXIS - 6 - measure.width(words, SMALL, false), y + 4, palette.secondInk());
        }
        text(g, unitName(), 0, 10, palette.secondInk());
        double metal = HEAD + height;
        g.setColor(palette.ink());
        g.setStroke(new BasicStroke(1.2f));
        g.draw(new Line2D.Double(AXIS, metal, width, metal));
        g.setStroke(new BasicStroke(0.7f));
        g.setColor(palette.secondInk());
        for (double x = AXIS + 4; x < width; x += 6) {
            g.draw(new Line2D.Double(x, metal, x - 4, metal + METAL));
        }
    }

    /** Even steps of 1, 2 or 5 that leave room for their numbers. */
    private double step() {
        double least = most * MIN_STEP_PX / height;
        double ten = Math.pow(10, Math.floor(Math.log10(least)));
        for (double times : new double[] {1, 2, 5}) {
            if (times * ten >= least) {
                return times * ten;
            }
        }
        return 10 * ten;
    }

    private void outline(Graphics2D g) {
        AffineTransform there = new AffineTransform(scale, 0, 0, scale, left, top);
        for (Path2D.Double outline : profile.outlines()) {
            Shape shape = there.createTransformedShape(outline);
            g.setColor(palette.secondInk());
            g.setStroke(new BasicStroke(1));
            g.draw(shape);
        }
        String words = profile.viewTitle();
        text(g, words, 0, heightPx() - 4, palette.secondInk());
    }

    private void leader(Graphics2D g, Point point) {
        double x = x(point);
        double y = top + scale * point.yMm();
        g.setColor(palette.line());
        g.setStroke(new BasicStroke(0.7f));
        g.draw(new Line2D.Double(x, HEAD + height + METAL, x, y));
        g.setColor(point.excluded() ? palette.secondInk() : palette.ink());
        g.fill(new Ellipse2D.Double(x - 2, y - 2, 4, 4));
    }

    /** Draws one point; its number too if it finds room right of what was written before. Gives the end of what is written. */
    private double point(Graphics2D g, Point point, double x, double free) {
        double y = point.kind() == SpotKind.VALUE ? y(point.um().orElse(0)) : HEAD + height;
        g.setStroke(new BasicStroke(1.2f));
        if (point.excluded()) {
            g.setColor(palette.secondInk());
            g.draw(new Line2D.Double(x - 3, y - 3, x + 3, y + 3));
            g.draw(new Line2D.Double(x - 3, y + 3, x + 3, y - 3));
            return free;
        }
        g.setColor(palette.ink());
        switch (point.kind()) {
            case NO_METAL -> {
                g.setColor(palette.ground());
                g.fill(new Rectangle2D.Double(x - 4, y - 4, 8, 8));
                g.setColor(palette.ink());
                g.draw(new Rectangle2D.Double(x - 4, y - 4, 8, 8));
                return free;
            }
            case OVER -> {
                Path2D head = new Path2D.Double();
                head.moveTo(x, HEAD - 9);
                head.lineTo(x - 5, HEAD);
                head.lineTo(x + 5, HEAD);
                head.closePath();
                g.fill(head);
                g.draw(new Line2D.Double(x, HEAD, x, HEAD + height));
                return free;
            }
            case VALUE -> {
                g.draw(new Line2D.Double(x, y + RADIUS, x, HEAD + height));
                g.setColor(palette.ground());
                g.fill(new Ellipse2D.Double(x - RADIUS, y - RADIUS, 2 * RADIUS, 2 * RADIUS));
                g.setColor(palette.ink());
                g.draw(new Ellipse2D.Double(x - RADIUS, y - RADIUS, 2 * RADIUS, 2 * RADIUS));
                if (point.outlier()) {
                    g.draw(new Line2D.Double(x - 6, y + 6, x + 6, y - 6));
                }
            }
        }
        String words = number(point.um().orElse(0));
        double wide = measure.width(words, SMALL, false);
        Rectangle2D box = new Rectangle2D.Double(x - wide / 2, y - 8 - SMALL, wide, SMALL);
        if (x - wide / 2 < free || isOnAnother(box, point)) {
            return free;
        }
        text(g, words, x - wide / 2, y - 8, palette.ink());
        return x + wide / 2 + 3;
    }

    /** Whether the circle of another value lies under some words. */
    private boolean isOnAnother(Rectangle2D box, Point point) {
        return profile.points().stream()
                .filter(other -> !other.equals(point) && other.kind() == SpotKind.VALUE)
                .anyMatch(other ->
                        box.intersects(x(other) - RADIUS, y(other.um().orElse(0)) - RADIUS, 2 * RADIUS, 2 * RADIUS));
    }

    private void aside(Graphics2D g) {
        if (profile.elsewhere().isEmpty()) {
            return;
        }
        double from = width - ASIDE;
        g.setColor(palette.line());
        g.setStroke(new BasicStroke(1));
        g.draw(new Line2D.Double(from, HEAD, from, HEAD + height + METAL));
        double step = (ASIDE - 16) / Math.max(1, profile.elsewhere().size());
        for (int i = 0; i < profile.elsewhere().size(); i++) {
            double free = profile.elsewhere().size() > 2 ? Double.POSITIVE_INFINITY : 0;
            point(g, profile.elsewhere().get(i), from + 8 + step * (i + 0.5), free);
        }
        text(
                g,
                say("diagram.panel-profile-drawing.place-not"),
                from + 6,
                HEAD + height + METAL + 12,
                palette.secondInk());
        text(
                g,
                say("diagram.panel-profile-drawing.in-this-view"),
                from + 6,
                HEAD + height + METAL + 24,
                palette.secondInk());
    }

    private String number(double um) {
        return figure(unit == ThicknessUnit.MIL ? "%.1f" : "%.0f", unit.fromUm(um))
                .replace('-', '\u2212');
    }

    private String unitName() {
        return unit == ThicknessUnit.MIL ? "mil" : "\u00b5m";
    }

    private void text(Graphics2D g, String words, double x, double y, Color color) {
        Font font = measure.regular().deriveFont((float) SMALL);
        g.setFont(font);
        g.setColor(color);
        g.drawString(words, (float) x, (float) y);
    }
}
