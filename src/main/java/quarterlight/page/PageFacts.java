package quarterlight.page;

import static quarterlight.language.Sentences.figure;
import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import quarterlight.car.Zone;
import quarterlight.findings.Findings;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.rust.ZoneRust;
import quarterlight.rust.need.RepairNeed;
import quarterlight.thickness.ThicknessSurvey;
import quarterlight.thickness.ZoneThickness;
import quarterlight.thickness.gauge.GaugeQuality;
import quarterlight.units.Days;
import quarterlight.units.XmlText;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.reading.GaugeCheck;

/** What the diagram page says in words and tables, ready for the template: texts only, units included. */
public final class PageFacts {
    public static final String DASH = "\u2013";

    private PageFacts() {}

    /** The facts of the visit in the order of the page, label to text; what is not known is left out. */
    public static Map<String, String> visit(Findings car) {
        VisitFacts facts = car.visit().facts();
        Map<String, String> rows = new LinkedHashMap<>();
        rows.put(
                say("diagram.page-facts.body"),
                say(
                        "diagram.page-facts.engine-in-the",
                        facts.car().body().style().said(),
                        facts.car().body().construction().said(),
                        facts.car().body().engine().said()));
        facts.car().built().ifPresent(date -> rows.put(say("diagram.page-facts.claimed-build-date"), date.said()));
        facts.car()
                .modelYear()
                .ifPresent(year -> rows.put(say("diagram.page-facts.model-year"), Integer.toString(year)));
        put(rows, say("diagram.page-facts.date-of-the-visit"), facts.date().map(Days::day));
        put(rows, say("diagram.page-facts.inspector"), facts.inspector());
        put(rows, say("diagram.page-facts.for"), facts.client());
        put(rows, say("diagram.page-facts.odometer"), facts.odometer());
        put(rows, say("diagram.page-facts.light"), facts.light());
        put(rows, say("diagram.page-facts.lifted"), facts.lifted());
        put(rows, say("diagram.page-facts.taken-apart"), facts.takenApart());
        put(rows, say("diagram.page-facts.claimed-by-the-seller"), facts.claimed());
        return rows;
    }

    /** The facts of dates and gauge that stand under the heading of the diagram page, in one line. */
    public static String line(Findings car) {
        VisitFacts facts = car.visit().facts();
        List<String> parts = new ArrayList<>();
        parts.add(facts.car()
                .built()
                .map(date -> say("diagram.page-facts.claimed-build-date-2", date.said()))
                .orElse(say("diagram.page-facts.build-date-not-claimed")));
        parts.add(facts.date()
                .map(date -> say("diagram.page-facts.visit", Days.day(date)))
                .orElse(say("diagram.page-facts.date-of-the-visit-not")));
        facts.inspector().ifPresent(name -> parts.add(say("diagram.page-facts.inspector-2", XmlText.clean(name))));
        int readings = car.visit().readings().size();
        long checks = car.visit().gaugeChecks().size();
        parts.add(
                readings == 0
                        ? say("diagram.page-facts.not-measured")
                        : say(
                                "diagram.page-facts.readings-in-zones",
                                readings,
                                car.thickness().zones().size()));
        if (readings > 0) {
            parts.add(
                    checks == 0
                            ? say("diagram.page-facts.gauge-not-checked")
                            : say("diagram.page-facts.gauge-checks", checks));
        }
        return String.join(" \u00b7 ", parts);
    }

    private static void put(Map<String, String> rows, String label, Optional<String> text) {
        text.ifPresent(value -> rows.put(label, XmlText.clean(value)));
    }

    /** In one sentence, whether the gauge can be trusted on the day. */
    public static String check(Findings car) {
        if (car.visit().readings().isEmpty()) {
            return say("diagram.page-facts.no-coating-thickness-was-measured");
        }
        GaugeQuality quality = GaugeQuality.of(car.visit());
        String count = say(
                "diagram.page-facts.gauge-checks-on-bare-metal",
                quality.verdicts().size());
        return switch (quality.summary()) {
            case NOT_CHECKED -> say("diagram.page-facts.no-gauge-check-was-made");
            case CANNOT_TELL -> say("diagram.page-facts.without-a-tolerance-for-all", count);
            case PASSED -> say("diagram.page-facts.all-within-the-tolerances-stated", count);
            case FAILED -> say("diagram.page-facts.one-at-least-failed-the", count);
        };
    }

    /** What is known of the gauge, in sentences. */
    public static List<String> gauge(Findings car, ThicknessRamp ramp) {
        List<String> sentences = new ArrayList<>();
        int readings = car.visit().readings().size();
        sentences.add(
                readings == 0
                        ? say("diagram.page-facts.no-coating-thickness-was-measured")
                        : say(
                                "diagram.page-facts.readings-in-zones-2",
                                readings,
                                car.thickness().zones().size()));
        for (Recorded<GaugeCheck> row : car.visit().gaugeChecks()) {
            GaugeCheck check = row.value();
            sentences.add(say(
                    "diagram.page-facts.the-readings-on-nominal-shown",
                    capital(check.when().said()),
                    check.on().word().equals("bare")
                            ? say("diagram.page-facts.bare-metal")
                            : say("diagram.page-facts.a-shim"),
                    ramp.typed(check.nominal()),
                    ramp.typed(check.shown())));
        }
        ThicknessSurvey.correctionRefused(car.visit()).ifPresent(sentences::add);
        if (readings > 0 && car.visit().gaugeChecks().isEmpty()) {
            sentences.add(say("diagram.page-facts.the-gauge-was-not-checked"));
        }
        return sentences;
    }

    /** Zones that carry a finding, in the order of the zone table: label, mean, spots, likelihoods, rust, need. */
    public static List<List<String>> zones(Findings car, ThicknessRamp ramp) {
        List<List<String>> rows = new ArrayList<>();
        ReportSelection selection = ReportSelection.of(car.visit());
        for (Zone zone : car.catalog().zonesOf(car.visit().facts().car().body())) {
            if (!selection.shows(zone.id())) {
                continue;
            }
            Optional<ZoneThickness> thickness = car.thickness().zone(zone.id());
            Optional<ZoneHistory> history = car.history().zone(zone.id());
            Optional<ZoneRust> rust = car.rust().zone(zone.id()).filter(ZoneRust::lookedAt);
            if (thickness.isPresent() || history.isPresent() || rust.isPresent()) {
                rows.add(List.of(
                        zone.label(),
                        thickness.map(t -> mean(t, ramp)).orElse(DASH),
                        thickness.map(t -> Integer.toString(t.spots().size())).orElse("0"),
                        history.map(PageFacts::refinish).orElse(DASH),
                        history.map(h -> ZoneHistory.shown(h.repairScore())).orElse(DASH),
                        rust.map(PageFacts::rust).orElse(say("diagram.page-facts.not-looked-at")),
                        rust.flatMap(ZoneRust::need).map(RepairNeed::word).orElse(DASH)));
            }
        }
        return rows;
    }

    public static String mean(ZoneThickness zone, ThicknessRamp ramp) {
        if (!zone.readable()) {
            return say("diagram.page-facts.not-readable-by-this-gauge");
        }
        OptionalDouble sd = zone.sdUm();
        String spread = sd.isPresent() ? say("diagram.page-facts.sd", ramp.number(sd.getAsDouble())) : "";
        String none = zone.noMetal() > 0 ? say("diagram.page-facts.no-metal-on", zone.noMetal()) : "";
        String over = zone.overSpots() > 0 ? say("diagram.page-facts.beyond-range-on", zone.overSpots()) : "";
        return zone.meanUm().isPresent()
                ? ramp.number(zone.meanUm().getAsDouble()) + spread + none + over
                : (none + over).replaceFirst("^, ", "");
    }

    public static String refinish(ZoneHistory zone) {
        return ZoneHistory.shown(zone.refinishScore()) + " (" + zone.shownBand() + ")";
    }

    public static String rust(ZoneRust zone) {
        String grade =
                zone.gradeInWords().map(g -> say("diagram.page-facts.grade", g)).orElse("");
        String ri =
                zone.ri().isPresent() ? say("diagram.page-facts.ri", zone.ri().getAsInt()) : "";
        int count = zone.holes().orElse(0);
        String holes = count == 0 ? "" : ", " + say("diagram.page-facts.holes", count);
        double mm2 = zone.rust().map(area -> area.mm2()).orElse(0.0);
        return mm2 == 0 ? say("diagram.page-facts.none-seen") : area(mm2) + grade + ri + holes;
    }

    /** An area in cm2 with one decimal from 1 cm2 on, else in mm2. */
    private static String area(double mm2) {
        return mm2 >= 100
                ? say("diagram.page-facts.cm", figure("%.1f", mm2 / 100))
                : say("diagram.page-facts.mm", figure("%.0f", mm2));
    }

    /** Cautions for what the page speaks of. */
    public static List<String> cautions(Findings car) {
        return car.rust().zones().stream()
                .flatMap(zone -> zone.cautions().stream())
                .distinct()
                .collect(Collectors.toList());
    }

    private static String capital(String word) {
        return word.substring(0, 1).toUpperCase(Locale.US) + word.substring(1);
    }
}
