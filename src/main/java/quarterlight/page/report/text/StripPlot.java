package quarterlight.page.report.text;

import static quarterlight.language.Sentences.say;

import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import quarterlight.diagram.file.SvgPath;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.findings.Findings;
import quarterlight.page.ThicknessRamp;
import quarterlight.page.panel.StripScale;
import quarterlight.thickness.ZoneThickness;
import quarterlight.units.XmlText;

/**
 * Spots of zones as circles along one scale, on which even steps are doublings: the same scale for every zone of the report. A
 * bar shows the 95 % interval of the mean, a tick the mean; crossed circles are outliers, squares at the left spots without
 * metal, arrows at the right spots beyond the gauge's range. Behind them a band: the car's factory level as estimated, one
 * standard deviation to either side.
 */
public final class StripPlot {
    private static final double MM_PER_UNIT = 178.0 / 720;
    private static final double NARROW = 455;
    private static final double CELL = 172;
    private static final double ASIDE = 28;
    private static final double ROW = 18;
    private static final double AXIS = 22;
    private static final String INK = InkPalette.hex(InkPalette.LIGHT.ink());
    private static final String SECOND = InkPalette.hex(InkPalette.LIGHT.secondInk());
    private static final String LINE = InkPalette.hex(InkPalette.LIGHT.line());
    private static final String ACCENT = InkPalette.hex(InkPalette.LIGHT.accent());
    private static final String GROUND = InkPalette.hex(InkPalette.LIGHT.ground());
    private static final String BAND =
            InkPalette.hex(InkPalette.mix(InkPalette.LIGHT.accent(), InkPalette.LIGHT.ground(), 0.14));

    private final ThicknessRamp ramp;
    private final StripScale scale;
    private final StripScale.Level level;
    private final StringBuilder out = new StringBuilder();
    private final double width;

    private StripPlot(Findings car, ThicknessRamp ramp, double width) {
        this.ramp = ramp;
        this.width = width;
        this.scale = new StripScale(ramp, 0, width, ASIDE);
        this.level = scale.level(car);
    }

    /** One zone without its name. */
    static String one(Findings car, ThicknessRamp ramp, ZoneThickness zone, String name) {
        return new StripPlot(car, ramp, NARROW)
                .drawing(List.of(zone), say("report.strip-plot.thickness-of", name, words(zone, ramp)));
    }

    /** One zone as a line of a table, without an axis. */
    static String line(Findings car, ThicknessRamp ramp, ZoneThickness zone, String name) {
        StripPlot plot = new StripPlot(car, ramp, CELL);
        plot.band(ROW);
        plot.row(zone, ROW / 2);
        return plot.element(ROW, say("report.strip-plot.thickness-of", name, words(zone, ramp)));
    }

    /** The axis of such lines. */
    public static String axis(Findings car, ThicknessRamp ramp) {
        StripPlot plot = new StripPlot(car, ramp, CELL);
        for (double tick : plot.scale.ticks()) {
            plot.text(plot.scale.tick(tick), 12, "middle", SECOND, plot.scale.label(tick));
            plot.line(plot.scale.tick(tick), 15, plot.scale.tick(tick), 18, SECOND, 0.8);
        }
        return plot.element(ROW, say("report.strip-plot.scale-of-the-strips-in", ramp.unitName()));
    }

    /** The spots in words: what a reader hears who does not see the plot. */
    static String words(ZoneThickness zone, ThicknessRamp ramp) {
        String values = zone.spots().stream()
                .flatMapToDouble(spot -> spot.um().stream())
                .sorted()
                .mapToObj(ramp::number)
                .collect(Collectors.joining(", "));
        String more = (zone.noMetal() > 0 ? say("report.strip-plot.no-metal-on", zone.noMetal()) : "")
                + (zone.overSpots() > 0 ? say("report.strip-plot.beyond-range-on", zone.overSpots()) : "");
        return (values.isEmpty()
                        ? say("report.strip-plot.no-values")
                        : say("report.strip-plot.spots-at", values, ramp.unitName()))
                + more;
    }

    private String drawing(List<ZoneThickness> zones, String alt) {
        double height = ROW * zones.size() + AXIS;
        double bottom = ROW * zones.size();
        band(bottom);
        List<Double> ticks = scale.ticks();
        for (double tick : ticks) {
            line(scale.tick(tick), 0, scale.tick(tick), bottom, LINE, 0.7);
        }
        for (int i = 0; i < zones.size(); i++) {
            row(zones.get(i), ROW * i + ROW / 2);
        }
        line(0, bottom, width, bottom, SECOND, 0.8);
        for (double tick : ticks) {
            text(scale.tick(tick), bottom + 14, "middle", SECOND, scale.label(tick));
        }
        text(width, bottom + 14, "end", SECOND, ramp.unitName());
        return element(height, alt);
    }

    private String element(double height, String alt) {
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"strip\" viewBox=\"0 0 " + number(width) + " "
                + number(height)
                + "\" role=\"img\" alt=\"" + XmlText.escaped(alt) + "\" style=\"width: "
                + number(MM_PER_UNIT * width) + "mm; height: "
                + number(MM_PER_UNIT * height) + "mm\"><g font-family=\"'Source Sans 3', sans-serif\" font-size=\"12\">"
                + out
                + "</g></svg>";
    }

    private void row(ZoneThickness zone, double y) {
        line(0, y, width, y, LINE, 0.5);
        scale.marks(zone, y).forEach(this::mark);
    }

    private void mark(StripScale.Mark mark) {
        Rectangle2D box = mark.shape().getBounds2D();
        switch (mark.kind()) {
            case INTERVAL -> rectangle(box.getX(), box.getY(), box.getWidth(), box.getHeight(), ACCENT);
            case VALUE ->
                out.append("<circle cx=\"%s\" cy=\"%s\" r=\"%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"1.2\"/>"
                        .formatted(
                                number(box.getCenterX()), number(box.getCenterY()), number(box.getWidth() / 2), INK));
            case BEYOND_RANGE -> path(mark.shape(), "fill=\"%s\"".formatted(INK));
            case NO_METAL ->
                path(mark.shape(), "fill=\"%s\" stroke=\"%s\" stroke-width=\"1.2\"".formatted(GROUND, INK));
            case APART -> path(mark.shape(), "fill=\"none\" stroke=\"%s\" stroke-width=\"1.2\"".formatted(INK));
            case MEAN -> path(mark.shape(), "fill=\"none\" stroke=\"%s\" stroke-width=\"2\"".formatted(ACCENT));
        }
    }

    private void path(Shape shape, String paint) {
        out.append("<path d=\"%s\" %s/>".formatted(SvgPath.write(shape), paint));
    }

    private void band(double height) {
        rectangle(level.low(), 0, level.high() - level.low(), height, BAND);
    }

    private void rectangle(double x, double y, double width, double height, String color) {
        out.append("<rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" fill=\"%s\"/>"
                .formatted(number(x), number(y), number(width), number(height), color));
    }

    private void line(double x1, double y1, double x2, double y2, String color, double width) {
        out.append("<path d=\"M%s %sL%s %s\" stroke=\"%s\" stroke-width=\"%s\" fill=\"none\"/>"
                .formatted(number(x1), number(y1), number(x2), number(y2), color, number(width)));
    }

    private void text(double x, double y, String anchor, String color, String words) {
        out.append("<text x=\"%s\" y=\"%s\" text-anchor=\"%s\" fill=\"%s\">"
                        .formatted(number(x), number(y), anchor, color))
                .append(XmlText.escaped(words))
                .append("</text>");
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
