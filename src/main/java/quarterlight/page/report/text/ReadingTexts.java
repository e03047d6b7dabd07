package quarterlight.page.report.text;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import quarterlight.car.ZoneId;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.diagram.ink.TextMeasure;
import quarterlight.findings.Findings;
import quarterlight.page.ThicknessRamp;
import quarterlight.page.panel.PanelProfile;
import quarterlight.page.panel.PanelProfileDrawing;
import quarterlight.page.print.DrawnSvg;
import quarterlight.thickness.MeanUncertainty;
import quarterlight.thickness.ZoneThickness;
import quarterlight.thickness.gauge.GaugeReach;
import quarterlight.thickness.spot.Spot;
import quarterlight.thickness.statistics.Outlier;
import quarterlight.units.XmlText;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.reading.GaugeCheck;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.reading.Reading;

/** The readings of a zone: figures in words, the plot, and every reading as it was typed. */
public final class ReadingTexts {
    private static final double PROFILE_PX = 455;
    private static final double MM_PER_PX = 178.0 / 720;

    private final Findings car;
    private final ThicknessRamp ramp;
    private final ThicknessRamp spots;
    private final boolean full;
    private final BodyDiagram diagram;

    /**
     * @param ramp for numbers
     * @param spots wide enough for every spot
     * @param diagram where the panels' outlines are drawn
     */
    public ReadingTexts(Findings car, ThicknessRamp ramp, ThicknessRamp spots, boolean full, BodyDiagram diagram) {
        this.car = car;
        this.ramp = ramp;
        this.spots = spots;
        this.full = full;
        this.diagram = diagram;
    }

    Optional<ReportContent.ReadingText> of(ZoneId zone, String name) {
        return car.thickness()
                .zone(zone)
                .map(thickness -> new ReportContent.ReadingText(
                        figures(thickness),
                        summary(thickness),
                        thickness.readable() && thickness.valueSpots() + thickness.overSpots() + thickness.noMetal() > 0
                                ? StripPlot.one(car, spots, thickness, name)
                                : "",
                        full && thickness.readable() && isOdd(thickness) ? profile(zone, name) : "",
                        full ? typed(thickness) : List.of(),
                        remarks(thickness)));
    }

    /** True if where the spots lie tells more than their values: spots that stand apart or show no number, a likely refinish. */
    private boolean isOdd(ZoneThickness zone) {
        boolean refinished = car.history()
                .zone(zone.zone())
                .map(history -> history.notFactory() > 0.5)
                .orElse(false);
        return refinished || !zone.outliers().isEmpty() || zone.noMetal() + zone.overSpots() + zone.excluded() > 0;
    }

    /** The panel seen from its edge, if the places of two spots at least are known. */
    private String profile(ZoneId zone, String name) {
        return PanelProfile.of(car, diagram, zone)
                .filter(found -> found.points().size() > 1)
                .map(found -> {
                    PanelProfileDrawing drawing = new PanelProfileDrawing(
                            found,
                            ramp.unit(),
                            InkPalette.LIGHT,
                            TextMeasure.bundled(),
                            PROFILE_PX,
                            PanelProfileDrawing.Room.PAGE);
                    String words = XmlText.escaped(
                            say("report.reading-texts.in-section-along-the-panel", name, drawing.words()));
                    String element = DrawnSvg.element(
                            drawing.widthPx(),
                            drawing.heightPx(),
                            drawing::draw,
                            say("report.reading-texts.from-its-edge", name));
                    return "<div class=\"whole\">"
                            + DrawnSvg.sized(
                                    element, MM_PER_PX * drawing.widthPx(), MM_PER_PX * drawing.heightPx(), words)
                            + "</div>";
                })
                .orElse("");
    }

    /** The one line that a reader needs. */
    private String summary(ZoneThickness zone) {
        List<String> parts = new ArrayList<>();
        if (!zone.readable()) {
            return say("report.reading-texts.the-gauge-cannot-read-its", substrate(zone));
        }
        zone.meanUm()
                .ifPresent(mean -> parts.add(say(
                        "report.reading-texts.on-average-over",
                        length(OptionalDouble.of(mean)),
                        count(zone.valueSpots(), "report.reading-texts.spots"))));
        if (zone.noMetal() > 0) {
            parts.add(say("report.reading-texts.no-metal-on", count(zone.noMetal(), "report.reading-texts.spots")));
        }
        if (zone.overSpots() > 0) {
            parts.add(say(
                    "report.reading-texts.beyond-the-range-on", count(zone.overSpots(), "report.reading-texts.spots")));
        }
        return parts.isEmpty() ? say("report.reading-texts.no-reading-counts") : String.join(", ", parts);
    }

    private List<String> figures(ZoneThickness zone) {
        List<String> parts = new ArrayList<>();
        if (!zone.readable()) {
            parts.add(say("report.reading-texts.the-gauge-cannot-read-this", substrate(zone)));
        }
        if (zone.meanUm().isPresent()) {
            String mean = say(
                    "report.reading-texts.mean-over",
                    length(zone.meanUm()),
                    count(zone.valueSpots(), "report.reading-texts.spots"));
            parts.add(
                    zone.showsInterval()
                            ? say(
                                    "report.reading-texts.95-interval-to-standard-deviation",
                                    mean,
                                    ramp.number(zone.ci95LowUm().getAsDouble()),
                                    length(zone.ci95HighUm()),
                                    length(zone.sdUm()))
                            : mean);
            parts.add(say(
                    "report.reading-texts.from-to-median",
                    count(zone.readings(), "report.reading-texts.readings"),
                    ramp.number(zone.minUm().getAsDouble()),
                    length(zone.maxUm()),
                    length(zone.medianUm())));
        }
        uncertainty(zone).ifPresent(parts::add);
        if (zone.noMetal() > 0) {
            parts.add(
                    say("report.reading-texts.no-metal-found-on", count(zone.noMetal(), "report.reading-texts.spots")));
        }
        if (zone.overSpots() > 0) {
            parts.add(say(
                    "report.reading-texts.beyond-the-gauge-s-range",
                    count(zone.overSpots(), "report.reading-texts.spots")));
        }
        if (zone.excluded() > 0) {
            parts.add(say(
                    "report.reading-texts.excluded-see-below",
                    count(zone.excluded(), "report.reading-texts.readings")));
        }
        return parts;
    }

    private Optional<String> uncertainty(ZoneThickness zone) {
        List<GaugeCheck> checks =
                car.visit().gaugeChecks().stream().map(Recorded::value).toList();
        return MeanUncertainty.of(zone, car.thickness().correction(), checks)
                .filter(known -> full && zone.readable())
                .map(known -> say(
                        "report.reading-texts.including-gauge-and-shim-tolerances",
                        length(OptionalDouble.of(known.expandedUm()))));
    }

    private String substrate(ZoneThickness zone) {
        return car.visit().facts().car().substrateOf(zone.zone()).said();
    }

    private String length(OptionalDouble um) {
        return ramp.number(um.orElseThrow()) + "\u2009" + ramp.unitName();
    }

    private static String count(int number, String key) {
        return say(key, number);
    }

    /** Spot by spot, each reading as typed with its unit and its note. */
    private List<String> typed(ZoneThickness zone) {
        Map<RecordId, Reading> rows = new LinkedHashMap<>();
        Map<String, List<String>> lines = new LinkedHashMap<>();
        for (Recorded<Reading> row : car.visit().readings()) {
            if (row.value().zone().equals(zone.zone())) {
                rows.put(row.id(), row.value());
            }
        }
        List<String> single = new ArrayList<>();
        for (Spot spot : zone.spots()) {
            List<Reading> readings = spot.readings().stream().map(rows::get).toList();
            String text = readings.stream().map(this::typed).collect(Collectors.joining(", "));
            if (spot.label().isPresent()) {
                lines.computeIfAbsent(spot.label().get(), key -> new ArrayList<>())
                        .add(text);
            } else {
                single.add(text);
            }
        }
        List<String> all = new ArrayList<>();
        lines.forEach((label, texts) -> all.add(say("report.reading-texts.spot", label, String.join(", ", texts))));
        if (!single.isEmpty()) {
            all.add((all.isEmpty() ? "Spots: " : say("report.reading-texts.single-spots")) + String.join(", ", single));
        }
        rows.values().stream()
                .filter(reading -> reading.exclude().isPresent())
                .forEach(reading -> all.add(say(
                        "report.reading-texts.excluded-because",
                        typed(reading),
                        reading.exclude().get())));
        if (zone.readable()) {
            rows.values().stream()
                    .filter(reading -> reading.exclude().isEmpty() && !reads(zone, reading))
                    .forEach(reading -> all.add(say(
                            "report.reading-texts.left-out-because-the-recorded", typed(reading), substrate(zone))));
        }
        return all;
    }

    private boolean reads(ZoneThickness zone, Reading reading) {
        return GaugeReach.reads(
                car.visit().facts().car().substrateOf(zone.zone()),
                reading.mode().map(Set::of).orElse(Set.of()));
    }

    private String typed(Reading reading) {
        String value = value(reading.value());
        return reading.note().map(note -> value + " (" + note + ")").orElse(value);
    }

    /** In the unit of the report; the tables of the archive have each as typed. */
    private String value(GaugeValue value) {
        if (value instanceof GaugeValue.Measured measured) {
            return ramp.typed(measured);
        }
        if (value instanceof GaugeValue.Range range) {
            return range.unit() == ramp.unit()
                    ? range.typed().replace('-', '\u2013') + "\u2009" + ramp.unitName()
                    : ramp.number(range.unit().toUm(range.low().doubleValue())) + "\u2013"
                            + length(OptionalDouble.of(
                                    range.unit().toUm(range.high().doubleValue())));
        }
        return value instanceof GaugeValue.NoMetal
                ? say("report.reading-texts.no-metal")
                : say("report.reading-texts.beyond-the-range");
    }

    private Optional<String> ranges(ZoneThickness zone) {
        String said = car.visit().readings().stream()
                .map(Recorded::value)
                .filter(reading -> reading.zone().equals(zone.zone()))
                .map(Reading::value)
                .filter(GaugeValue.Range.class::isInstance)
                .map(this::value)
                .collect(Collectors.joining(", "));
        return said.isEmpty() ? Optional.empty() : Optional.of(say("report.reading-texts.said-as-a-range-with", said));
    }

    private List<String> remarks(ZoneThickness zone) {
        List<String> remarks = new ArrayList<>();
        ranges(zone).ifPresent(remarks::add);
        for (Outlier outlier : zone.outliers()) {
            remarks.add(say(
                    "report.reading-texts.the-spot-at-is-an",
                    ramp.number(outlier.um()),
                    ramp.unitName(),
                    outlier.rule() == Outlier.Rule.GRUBBS
                            ? say("report.reading-texts.grubbs-test-at-0-05")
                            : say("report.reading-texts.beyond-1-5-interquartile-ranges")));
        }
        return remarks;
    }
}
