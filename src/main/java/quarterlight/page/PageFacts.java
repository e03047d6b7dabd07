package quarterlight.page;

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
import quarterlight.units.Numerals;
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
                "Body",
                facts.car().body().style().word() + ", "
                        + facts.car().body().construction().word() + ", engine in the "
                        + facts.car().body().engine().word());
        facts.car().built().ifPresent(date -> rows.put("Claimed build date", date.said()));
        facts.car().modelYear().ifPresent(year -> rows.put("Model year", Integer.toString(year)));
        put(rows, "Date of the visit", facts.date().map(Days::day));
        put(rows, "Inspector", facts.inspector());
        put(rows, "For", facts.client());
        put(rows, "Odometer", facts.odometer());
        put(rows, "Light", facts.light());
        put(rows, "Lifted", facts.lifted());
        put(rows, "Taken apart", facts.takenApart());
        put(rows, "Claimed by the seller", facts.claimed());
        return rows;
    }

    /** The facts of dates and gauge that stand under the heading of the diagram page, in one line. */
    public static String line(Findings car) {
        VisitFacts facts = car.visit().facts();
        List<String> parts = new ArrayList<>();
        parts.add(facts.car()
                .built()
                .map(date -> "Claimed build date " + date.said())
                .orElse("Build date not claimed"));
        parts.add(facts.date().map(date -> "visit " + Days.day(date)).orElse("date of the visit not given"));
        facts.inspector().ifPresent(name -> parts.add("inspector " + XmlText.clean(name)));
        int readings = car.visit().readings().size();
        long checks = car.visit().gaugeChecks().size();
        parts.add(
                readings == 0
                        ? "not measured"
                        : readings + " readings in " + car.thickness().zones().size() + " zones");
        if (readings > 0) {
            parts.add(checks == 0 ? "gauge not checked" : checks + " gauge checks");
        }
        return String.join(" \u00b7 ", parts);
    }

    private static void put(Map<String, String> rows, String label, Optional<String> text) {
        text.ifPresent(value -> rows.put(label, XmlText.clean(value)));
    }

    /** In one sentence, whether the gauge can be trusted on the day. */
    public static String check(Findings car) {
        if (car.visit().readings().isEmpty()) {
            return "No coating thickness was measured.";
        }
        GaugeQuality quality = GaugeQuality.of(car.visit());
        String count = quality.verdicts().size() + " gauge checks on bare metal and shims";
        return switch (quality.summary()) {
            case NOT_CHECKED -> "No gauge check was made.";
            case CANNOT_TELL -> count + ", without a tolerance for all: they cannot show that the gauge was right.";
            case PASSED -> count + ", all within the tolerances stated.";
            case FAILED -> count + "; one at least failed: the readings are suspect.";
        };
    }

    /** What is known of the gauge, in sentences. */
    public static List<String> gauge(Findings car, ThicknessRamp ramp) {
        List<String> sentences = new ArrayList<>();
        int readings = car.visit().readings().size();
        sentences.add(
                readings == 0
                        ? "No coating thickness was measured."
                        : readings + " readings in " + car.thickness().zones().size() + " zones.");
        for (Recorded<GaugeCheck> row : car.visit().gaugeChecks()) {
            GaugeCheck check = row.value();
            sentences.add(String.format(
                    Locale.US,
                    "%s the readings, on %s: nominal %s, shown %s.",
                    capital(check.when().word()),
                    check.on().word().equals("bare") ? "bare metal" : "a shim",
                    ramp.typed(check.nominal()),
                    ramp.typed(check.shown())));
        }
        ThicknessSurvey.correctionRefused(car.visit()).ifPresent(sentences::add);
        if (readings > 0 && car.visit().gaugeChecks().isEmpty()) {
            sentences.add("The gauge was not checked on bare metal or shims.");
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
                        rust.map(PageFacts::rust).orElse("not looked at"),
                        rust.flatMap(ZoneRust::need).map(RepairNeed::word).orElse(DASH)));
            }
        }
        return rows;
    }

    public static String mean(ZoneThickness zone, ThicknessRamp ramp) {
        if (!zone.readable()) {
            return "not readable by this gauge";
        }
        OptionalDouble sd = zone.sdUm();
        String spread = sd.isPresent() ? " (sd\u2009" + ramp.number(sd.getAsDouble()) + ")" : "";
        String none = zone.noMetal() > 0 ? ", no metal on " + zone.noMetal() : "";
        String over = zone.overSpots() > 0 ? ", beyond range on " + zone.overSpots() : "";
        return zone.meanUm().isPresent()
                ? ramp.number(zone.meanUm().getAsDouble()) + spread + none + over
                : (none + over).replaceFirst("^, ", "");
    }

    public static String refinish(ZoneHistory zone) {
        return ZoneHistory.shown(zone.refinishScore()) + " (" + zone.shownBand() + ")";
    }

    public static String rust(ZoneRust zone) {
        String grade = zone.gradeInWords().map(g -> ", grade " + g).orElse("");
        String ri = zone.ri().isPresent() ? ", Ri " + zone.ri().getAsInt() : "";
        int count = zone.holes().orElse(0);
        String holes = count == 0 ? "" : ", " + Numerals.count(count, "hole", "holes");
        double mm2 = zone.rust().map(area -> area.mm2()).orElse(0.0);
        return mm2 == 0 ? "none seen" : area(mm2) + grade + ri + holes;
    }

    /** An area in cm2 with one decimal from 1 cm2 on, else in mm2. */
    private static String area(double mm2) {
        return mm2 >= 100
                ? String.format(Locale.US, "%.1f\u2009cm\u00b2", mm2 / 100)
                : String.format(Locale.US, "%.0f\u2009mm\u00b2", mm2);
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
