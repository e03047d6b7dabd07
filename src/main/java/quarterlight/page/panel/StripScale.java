package quarterlight.page.panel;

import static quarterlight.language.Sentences.figure;

import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import quarterlight.findings.Findings;
import quarterlight.page.ThicknessRamp;
import quarterlight.thickness.ZoneThickness;
import quarterlight.thickness.spot.Spot;
import quarterlight.thickness.statistics.Outlier;

/**
 * Where the spots of zones lie on a strip, on which even steps are doublings; the same for every zone of a page or window. Lengths are px.
 * Immutable.
 *
 * @param ramp the scale
 * @param from the left end of the strip: what found no metal stands there
 * @param to the right end: what lies beyond the gauge's range stands there
 * @param aside the room kept for these at either end
 */
public record StripScale(ThicknessRamp ramp, double from, double to, double aside) {
    private static final double RADIUS = 4.2;
    private static final double SQUARE = 7;
    private static final double ARROW = 4.5;
    private static final double STEP = 9;
    private static final double MIN_UM = 1e-6;

    /** What a mark on the strip says. */
    public enum MarkKind {
        /** The 95 % interval of the mean. */
        INTERVAL,
        /** A spot's value, as a circle. */
        VALUE,
        /** The stroke through the circle of a spot that stands apart. */
        APART,
        NO_METAL,
        BEYOND_RANGE,
        MEAN
    }

    /** One mark; intervals and arrows are filled, the others outlined. */
    public record Mark(MarkKind kind, Shape shape) {}

    /**
     * The car's factory level as estimated.
     *
     * @param low one standard deviation below it
     * @param high one standard deviation above it
     */
    public record Level(double low, double at, double high) {}

    /** Where a thickness lies. */
    public double x(double um) {
        return from + aside + (to - from - 2 * aside) * ramp.share(Math.max(um, MIN_UM));
    }

    /** The values with a line of their own, in the unit of the scale. */
    public List<Double> ticks() {
        return IntStream.rangeClosed(0, ramp.doublings())
                .mapToObj(i -> ramp.low() * (1 << i))
                .toList();
    }

    /** Where a value in the unit of the scale lies. */
    public double tick(double value) {
        return x(ramp.unit().toUm(value));
    }

    /** The value of a line, with a decimal where the scale begins below 1. */
    public String label(double value) {
        return figure(ramp.low() < 1 ? "%.1f" : "%.0f", value);
    }

    public Level level(Findings car) {
        double level = car.history().carLevel().um();
        double sd = car.history().carLevelSd().um();
        return new Level(x(level - sd), x(level), x(level + sd));
    }

    /** The marks of a zone around a line at this height, in the order in which they are drawn. */
    public List<Mark> marks(ZoneThickness zone, double y) {
        List<Mark> marks = new ArrayList<>();
        if (zone.showsInterval()) {
            double low = x(zone.ci95LowUm().getAsDouble());
            double high = x(zone.ci95HighUm().getAsDouble());
            marks.add(new Mark(MarkKind.INTERVAL, new Rectangle2D.Double(low, y - 2, Math.max(1, high - low), 4)));
        }
        int none = 0;
        int over = 0;
        for (Spot spot : zone.spots()) {
            switch (spot.kind()) {
                case NO_METAL ->
                    marks.add(new Mark(
                            MarkKind.NO_METAL,
                            new Rectangle2D.Double(from + 5 + STEP * none++, y - SQUARE / 2, SQUARE, SQUARE)));
                case OVER -> marks.add(new Mark(MarkKind.BEYOND_RANGE, arrow(to - 10 - STEP * over++, y)));
                case VALUE -> value(marks, zone, spot.um().getAsDouble(), y);
            }
        }
        zone.meanUm()
                .ifPresent(
                        mean -> marks.add(new Mark(MarkKind.MEAN, new Line2D.Double(x(mean), y - 8, x(mean), y + 8))));
        return List.copyOf(marks);
    }

    private void value(List<Mark> marks, ZoneThickness zone, double um, double y) {
        double x = x(um);
        marks.add(new Mark(MarkKind.VALUE, new Ellipse2D.Double(x - RADIUS, y - RADIUS, 2 * RADIUS, 2 * RADIUS)));
        if (zone.outliers().stream().mapToDouble(Outlier::um).anyMatch(apart -> apart == um)) {
            marks.add(new Mark(MarkKind.APART, new Line2D.Double(x - 6, y + 6, x + 6, y - 6)));
        }
    }

    private static Shape arrow(double x, double y) {
        Path2D head = new Path2D.Double();
        head.moveTo(x, y - ARROW);
        head.lineTo(x + 8, y);
        head.lineTo(x, y + ARROW);
        head.closePath();
        return head;
    }
}
