package quarterlight.page;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import quarterlight.compare.CarSummary;
import quarterlight.compare.ComparedTrial;
import quarterlight.compare.ComparedZone;
import quarterlight.compare.Comparison;
import quarterlight.compare.Contrast;
import quarterlight.compare.CountComparison;
import quarterlight.compare.CountSummary;
import quarterlight.compare.Side;
import quarterlight.compare.ZoneFacts;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.ink.DiagramInk;
import quarterlight.diagram.scene.DiagramScene;
import quarterlight.file.Lasting;
import quarterlight.findings.Findings;
import quarterlight.finish.FinishCautions;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.marks.MarksReport;
import quarterlight.page.print.FontFaces;
import quarterlight.page.print.Paper;
import quarterlight.page.print.PdfDocument;
import quarterlight.page.print.Template;
import quarterlight.page.print.XmlText;
import quarterlight.page.report.text.ClaimTexts;
import quarterlight.rust.ZoneRust;
import quarterlight.rust.need.RepairNeed;
import quarterlight.visit.trial.Trial;

/**
 * The page of two cars: their diagrams side by side on one scale, what differs beyond its uncertainty, the counts, and every
 * shared zone. It declares no winner. The same content as PDF and as one HTML file.
 */
public final class ComparisonPages {
    /** Width at which one of the two sheets is laid out, px. */
    private static final double SHEET_PX = 760;

    private static final double SIDES_MM = 24;
    private static final double BETWEEN_MM = 6;
    private static final double WORDS_MM = 72;

    private final Findings a;
    private final Findings b;
    private final BodyDiagram diagramA;
    private final BodyDiagram diagramB;
    private final Comparison comparison;

    /** @param comparison of the same two cars, in the same order */
    public ComparisonPages(Findings a, BodyDiagram diagramA, Findings b, BodyDiagram diagramB, Comparison comparison) {
        this.a = a;
        this.diagramA = diagramA;
        this.b = b;
        this.diagramB = diagramB;
        this.comparison = comparison;
    }

    /**
     * Writes {@code compare.pdf} and {@code compare.html} into a folder in which nobody looks yet.
     *
     * @return the files made
     */
    public List<Path> write(Path folder, Paper paper) throws IOException {
        Lasting.createFolders(folder);
        Map<String, Object> model = model(paper);
        model.put("screen", false);
        String pdf = new Template().fill("compare.ftlh", model);
        model.put("screen", true);
        model.put("fonts", FontFaces.css());
        String html = new Template().fill("compare.ftlh", model);
        return List.of(
                Lasting.fill(folder.resolve("compare.pdf"), out -> PdfDocument.write(pdf, out)),
                Lasting.fillText(folder.resolve("compare.html"), XmlText.html(html)));
    }

    private Map<String, Object> model(Paper paper) {
        ThicknessRamp ramp = ThicknessRamp.of(List.of(a, b), ThicknessRamp.usualUnit(a));
        double widthMm = (paper.heightMm() - SIDES_MM - BETWEEN_MM) / 2;
        double high = (paper.widthMm() - WORDS_MM) * SHEET_PX / widthMm;
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("paper", paper);
        model.put("widthMm", String.format(Locale.ROOT, "%.1f", widthMm));
        model.put("nameA", XmlText.clean(comparison.a().name()));
        model.put("nameB", XmlText.clean(comparison.b().name()));
        model.put("svgA", drawing(a, diagramA, ramp, high, widthMm));
        model.put("svgB", drawing(b, diagramB, ramp, high, widthMm));
        model.put("unit", ramp.unitName());
        model.put("counted", comparison.counted().size());
        model.put(
                "counts",
                List.of(count("refinished", comparison.refinished()), count("with filler", comparison.repaired())));
        model.put("forA", sentences(contrast -> contrast.speaksFor().equals(Optional.of(Side.A))));
        model.put("forB", sentences(contrast -> contrast.speaksFor().equals(Optional.of(Side.B))));
        model.put("other", sentences(contrast -> contrast.speaksFor().isEmpty()));
        model.put("dates", List.of(dates("A", comparison.a()), dates("B", comparison.b())));
        model.put("claims", List.of(claims("A", a), claims("B", b)));
        model.put("datesCaution", MarksReport.CAUTION);
        model.put(
                "zones",
                comparison.zones().stream()
                        .filter(ComparisonPages::isKnown)
                        .map(zone -> row(zone, ramp))
                        .toList());
        model.put(
                "trials", comparison.trials().stream().map(ComparisonPages::row).toList());
        List<String> cautions = new ArrayList<>(FinishCautions.texts());
        PageFacts.cautions(a).forEach(cautions::add);
        PageFacts.cautions(b).stream().filter(text -> !cautions.contains(text)).forEach(cautions::add);
        model.put("cautions", cautions);
        return model;
    }

    private static String drawing(Findings car, BodyDiagram diagram, ThicknessRamp ramp, double high, double widthMm) {
        DiagramInk ink = FindingsInk.of(car, ramp, List.of());
        DiagramScene scene = VisitPages.scene(diagram, ink, VisitPages.layout(diagram, SHEET_PX, high, ink));
        return VisitPages.inline(scene, car.visit().facts().car().name(), widthMm);
    }

    private static Map<String, String> count(String what, CountComparison counts) {
        Map<String, String> row = new LinkedHashMap<>();
        row.put("what", what);
        row.put("a", shown(counts.a()));
        row.put("b", shown(counts.b()));
        row.put("fewerA", percent(counts.chanceAFewer()));
        row.put("equal", percent(counts.chanceEqual()));
        row.put("fewerB", percent(counts.chanceBFewer()));
        return row;
    }

    private static String shown(CountSummary count) {
        return String.format(Locale.US, "%.1f (%d to %d)", count.mean(), count.low(), count.high());
    }

    private static String percent(double chance) {
        return chance > 0 && chance < 0.005
                ? "under 1\u2009%"
                : chance < 1 && chance > 0.995
                        ? "over 99\u2009%"
                        : String.format(Locale.US, "%.0f\u2009%%", 100 * chance);
    }

    private List<Map<String, String>> sentences(Predicate<Contrast> wanted) {
        List<Map<String, String>> all = new ArrayList<>();
        for (ComparedZone zone : comparison.zones()) {
            zone.contrasts().stream()
                    .filter(wanted)
                    .forEach(contrast ->
                            all.add(Map.of("zone", zone.zone().label(), "text", XmlText.clean(contrast.text()))));
        }
        return all;
    }

    private static Map<String, Object> dates(String side, CarSummary car) {
        return Map.of(
                "side",
                side,
                "judged",
                car.datesJudged(),
                "sentences",
                car.dateContradictions().stream()
                        .map(contradiction -> XmlText.clean(contradiction.sentence()))
                        .toList());
    }

    private static Map<String, Object> claims(String side, Findings car) {
        return Map.of(
                "side",
                side,
                "rows",
                ClaimTexts.of(car).stream()
                        .map(row -> Map.of(
                                "place", XmlText.clean(row.place()),
                                "claim", XmlText.clean(row.claim()),
                                "by", row.by(),
                                "verdict", row.verdict(),
                                "found", XmlText.clean(String.join(" ", row.found()))))
                        .toList());
    }

    private static boolean isKnown(ComparedZone zone) {
        return isKnown(zone.a()) || isKnown(zone.b());
    }

    private static boolean isKnown(ZoneFacts facts) {
        return facts.thickness().isPresent()
                || facts.history().isPresent()
                || facts.rust().filter(ZoneRust::lookedAt).isPresent();
    }

    private static List<String> row(ComparedZone zone, ThicknessRamp ramp) {
        List<String> cells = new ArrayList<>(List.of(zone.zone().label()));
        for (ZoneFacts facts : List.of(zone.a(), zone.b())) {
            cells.add(facts.thickness().map(t -> PageFacts.mean(t, ramp)).orElse("not measured"));
            cells.add(facts.history().map(PageFacts::refinish).orElse(PageFacts.DASH));
            cells.add(facts.history()
                    .map(ZoneHistory::repairScore)
                    .map(ZoneHistory::shown)
                    .orElse(PageFacts.DASH));
            cells.add(
                    facts.rust().filter(ZoneRust::lookedAt).map(PageFacts::rust).orElse("not looked at"));
            cells.add(facts.rust().flatMap(ZoneRust::need).map(RepairNeed::word).orElse(PageFacts.DASH));
        }
        return cells;
    }

    private static List<String> row(ComparedTrial trial) {
        return List.of(XmlText.clean(trial.item()), shown(trial.a()), shown(trial.b()));
    }

    private static String shown(Optional<Trial> trial) {
        return trial.map(t -> t.result().word()
                        + t.value()
                                .map(value -> ", " + value.toPlainString() + "\u2009"
                                        + XmlText.clean(t.unit().orElse("")))
                                .orElse(""))
                .orElse("not tried");
    }
}
