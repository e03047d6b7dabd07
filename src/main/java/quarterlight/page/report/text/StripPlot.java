package quarterlight.page.report.text;

import static quarterlight.language.Sentences.say;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.findings.Findings;
import quarterlight.page.ThicknessRamp;
import quarterlight.thickness.ZoneThickness;
import quarterlight.thickness.spot.Spot;
import quarterlight.thickness.spot.SpotKind;
import quarterlight.thickness.statistics.Outlier;
import quarterlight.units.Thickness;
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
    private static final double LEFT = 26;
    private static final double RIGHT = 30;
    private static final double ROW = 18;
    private static final double AXIS = 22;
    private static final double RADIUS = 4.2;
    private static final String INK = InkPalette.hex(InkPalette.LIGHT.ink());
    private static final String SECOND = InkPalette.hex(InkPalette.LIGHT.secondInk());
    private static final String LINE = InkPalette.hex(InkPalette.LIGHT.line());
    private static final String ACCENT = InkPalette.hex(InkPalette.LIGHT.accent());
    private static final String BAND = "#DCE8E6";

    private final ThicknessRamp ramp;
    private final double levelLowUm;
    private final double levelHighUm;
    private final StringBuilder out = new StringBuilder();
    private final double width;

    private StripPlot(Findings car, ThicknessRamp ramp, double width) {
        this.ramp = ramp;
        this.width = width;
        double level = car.history().carLevel().um();
        double sd = car.history().carLevelSd().um();
        levelLowUm = Math.max(1, level - sd);
        levelHighUm = level + sd;
    }

    /** One zone without its name. */
    static String one(Findings car, ThicknessRamp ramp, ZoneThickness zone, String name) {
        return new StripPlot(car, ramp, NARROW)
                .drawing(List.of(zone), say("report.strip-plot.thickness-of", name, words(zone, ramp)));
    }

    /** One zone as a line of a table, without an axis. */
    static String line(Findings car, ThicknessRamp ramp, ZoneThickness zone, String name) {
        StripPlot plot = new StripPlot(car, ramp, CELL);
        plot.rectangle(plot.x(plot.levelLowUm), 0, plot.x(plot.levelHighUm) - plot.x(plot.levelLowUm), ROW, BAND);
        plot.row(zone, ROW / 2);
        return plot.element(ROW, say("report.strip-plot.thickness-of", name, words(zone, ramp)));
    }

    /** The axis of such lines. */
    public static String axis(Findings car, ThicknessRamp ramp) {
        StripPlot plot = new StripPlot(car, ramp, CELL);
        for (double tick : plot.ticks()) {
            plot.text(plot.x(tick), 12, "middle", SECOND, plot.shown(tick));
            plot.line(plot.x(tick), 15, plot.x(tick), 18, SECOND, 0.8);
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
        rectangle(x(levelLowUm), 0, x(levelHighUm) - x(levelLowUm), bottom, BAND);
        List<Double> ticks = ticks();
        for (double tick : ticks) {
            line(x(tick), 0, x(tick), bottom, LINE, 0.7);
        }
        for (int i = 0; i < zones.size(); i++) {
            row(zones.get(i), ROW * i + ROW / 2);
        }
        line(0, bottom, width, bottom, SECOND, 0.8);
        for (double tick : ticks) {
            text(x(tick), bottom + 14, "middle", SECOND, shown(tick));
        }
        text(width, bottom + 14, "end", SECOND, ramp.unitName());
        return element(height, alt);
    }

    private String shown(double tick) {
        return String.format(
                Locale.US, ramp.low() < 1 ? "%.1f" : "%.0f", ramp.unit().fromUm(tick));
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
        OptionalDouble low = zone.ci95LowUm();
        OptionalDouble high = zone.ci95HighUm();
        if (zone.showsInterval()) {
            double from = x(Math.max(low.getAsDouble(), 1e-6));
            rectangle(from, y - 2, Math.max(1, x(high.getAsDouble()) - from), 4, ACCENT);
        }
        int none = 0;
        int over = 0;
        for (Spot spot : zone.spots()) {
            if (spot.kind() == SpotKind.NO_METAL) {
                double at = 5 + 9 * none++;
                out.append(
                        "<rect x=\"%s\" y=\"%s\" width=\"7\" height=\"7\" fill=\"#FFFFFF\" stroke=\"%s\" stroke-width=\"1.2\"/>"
                                .formatted(number(at), number(y - 3.5), INK));
            } else if (spot.kind() == SpotKind.OVER) {
                double at = width - 10 - 9 * over++;
                out.append(
                        "<path d=\"M%s %sl8 4.5l-8 4.5z\" fill=\"%s\"/>".formatted(number(at), number(y - 4.5), INK));
            } else {
                circle(spot.um().getAsDouble(), y, isOutlier(zone, spot.um().getAsDouble()));
            }
        }
        zone.meanUm().ifPresent(mean -> line(x(mean), y - 8, x(mean), y + 8, ACCENT, 2));
    }

    private static boolean isOutlier(ZoneThickness zone, double um) {
        return zone.outliers().stream().mapToDouble(Outlier::um).anyMatch(outlier -> outlier == um);
    }

    private void circle(double um, double y, boolean crossed) {
        double x = x(um);
        out.append("<circle cx=\"%s\" cy=\"%s\" r=\"%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"1.2\"/>"
                .formatted(number(x), number(y), number(RADIUS), INK));
        if (crossed) {
            line(x - 6, y + 6, x + 6, y - 6, INK, 1.2);
        }
    }

    private List<Double> ticks() {
        return IntStream.rangeClosed(0, ramp.doublings())
                .mapToObj(i -> um(ramp.low() * (1 << i)))
                .toList();
    }

    private double um(double typed) {
        return Thickness.of(typed, ramp.unit()).um();
    }

    private double x(double um) {
        double from = LEFT;
        return from + (width - RIGHT - from) * ramp.share(Math.max(um, 1e-6));
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
