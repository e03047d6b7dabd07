package quarterlight.cli.analysis;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.car.ZoneCatalog;
import quarterlight.cli.call.CliContext;
import quarterlight.cli.call.CliOptions;
import quarterlight.cli.call.Exit;
import quarterlight.cli.call.Verb;
import quarterlight.cli.call.Visits;
import quarterlight.cli.text.CliText;
import quarterlight.cli.text.TextTable;
import quarterlight.store.problem.VisitProblem;
import quarterlight.table.json.JsonObject;
import quarterlight.thickness.CarThickness;
import quarterlight.thickness.PanelAnalyses;
import quarterlight.thickness.ThicknessSurvey;
import quarterlight.thickness.ZoneThickness;
import quarterlight.thickness.statistics.MeanDifference;
import quarterlight.thickness.statistics.Outlier;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.VisitRecord;

/** {@code zones}: statistics of the readings of each zone. */
public final class ZonesVerb implements Verb {
    /** From this chance down a step within a panel is told in words. */
    private static final double STEP_LEVEL = .05;

    private static final double MIL = ThicknessUnit.MIL.toUm(1);

    private final CliContext around;

    public ZonesVerb(CliContext around) {
        this.around = around;
    }

    @Override
    public CommandSpec spec() {
        return CliOptions.verb("zones", "thickness statistics for each zone")
                .addPositional(CliOptions.visit())
                .addOption(CliOptions.json());
    }

    @Override
    public int run(ParseResult call) throws VisitProblem {
        Path visit = CliOptions.pathAt(call, 0);
        VisitRecord record = Visits.read(around, visit);
        ZoneCatalog catalog = around.zones().get();
        ThicknessSurvey survey = ThicknessSurvey.of(record, catalog);
        around.console()
                .print(
                        CliOptions.isJson(call)
                                ? analyzed(record, survey, catalog).text()
                                : table(survey)
                                        + differences(record, survey, catalog)
                                        + CliText.line(ThicknessSurvey.correctionRefused(record)));
        return Exit.DONE;
    }

    /** The statistics, and the panels set against one another. */
    private static JsonObject analyzed(VisitRecord record, ThicknessSurvey survey, ZoneCatalog catalog) {
        CarThickness car = CarThickness.of(survey, catalog);
        PanelAnalyses panels = PanelAnalyses.of(record, survey, catalog);
        return json(survey)
                .put("correction_refused", ThicknessSurvey.correctionRefused(record))
                .put(
                        "left_less_right",
                        car.sides().stream()
                                .map(pair -> difference(pair.difference())
                                        .put("left", pair.left())
                                        .put("right", pair.right()))
                                .toList())
                .put("panel_less_car", against(car.against()))
                .put("panel_less_neighbors", against(panels.neighbors()))
                .put("horizontal_less_vertical", panels.horizontal().map(ZonesVerb::difference))
                .put(
                        "steps",
                        panels.steps().stream()
                                .map(step -> new JsonObject()
                                        .put("zone", step.zone())
                                        .put("edge", step.found().alongX() ? "upright" : "level")
                                        .put("at", step.found().at())
                                        .put("step_um", step.found().stepUm())
                                        .put("p", step.found().p()))
                                .toList());
    }

    /** What stands out when panels are set against one another, in words; empty if nothing does. */
    private static String differences(VisitRecord record, ThicknessSurvey survey, ZoneCatalog catalog) {
        CarThickness car = CarThickness.of(survey, catalog);
        PanelAnalyses panels = PanelAnalyses.of(record, survey, catalog);
        List<String> lines = new ArrayList<>();
        car.sides()
                .forEach(pair -> difference(
                        lines, pair.left().value() + " less " + pair.right().value(), pair.difference()));
        panels.neighbors()
                .forEach(one ->
                        difference(lines, one.zone().value() + " less the panels that meet it", one.difference()));
        panels.horizontal().ifPresent(found -> difference(lines, "level panels less upright ones", found));
        panels.steps().stream()
                .filter(step -> step.found().p() <= STEP_LEVEL)
                .forEach(step -> lines.add(String.format(
                        Locale.US,
                        "  step in %s at %s edge (%s = %.2f): %+.0f um, chance %.3f",
                        step.zone(),
                        step.found().alongX() ? "an upright" : "a level",
                        step.found().alongX() ? "x" : "y",
                        step.found().at(),
                        step.found().stepUm(),
                        step.found().p())));
        int looks = car.sides().size()
                + panels.neighbors().size()
                + (panels.horizontal().isPresent() ? 1 : 0)
                + panels.steps().size();
        return lines.isEmpty()
                ? ""
                : "\nDifferences beyond their 95 % interval, of " + looks
                        + " looked at (of 20 without any difference, one shows by chance):\n" + String.join("\n", lines)
                        + "\n";
    }

    private static void difference(List<String> lines, String what, MeanDifference found) {
        if (found.isClear()) {
            lines.add(String.format(
                    Locale.US, "  %s: %+.0f um (%+.0f to %+.0f)", what, found.difference(), found.low(), found.high()));
        }
    }

    private static List<JsonObject> against(List<CarThickness.Against> all) {
        return all.stream()
                .map(one -> difference(one.difference()).put("zone", one.zone()))
                .toList();
    }

    private static JsonObject difference(MeanDifference difference) {
        return new JsonObject()
                .put("difference_um", difference.difference())
                .put("ci95_low_um", difference.low())
                .put("ci95_high_um", difference.high());
    }

    static JsonObject json(ThicknessSurvey survey) {
        return new JsonObject()
                .put("unit", "um")
                .put("zones", survey.zones().stream().map(ZonesVerb::zone).toList());
    }

    private static JsonObject zone(ZoneThickness zone) {
        return new JsonObject()
                .put("zone", zone.zone())
                .put("readings", zone.readings())
                .put("excluded", zone.excluded())
                .put("no_metal", zone.noMetal())
                .put("over_range", zone.overRange())
                .put("spots", zone.valueSpots())
                .put("mean_um", zone.meanUm())
                .put("sd_um", zone.sdUm())
                .put("ci95_low_um", zone.ci95LowUm())
                .put("ci95_high_um", zone.ci95HighUm())
                .put("median_um", zone.medianUm())
                .put("mad_um", zone.madUm())
                .put("min_um", zone.minUm())
                .put("max_um", zone.maxUm())
                .put("outliers", outliers(zone.outliers()))
                .put("readable", zone.readable());
    }

    private static List<JsonObject> outliers(List<Outlier> outliers) {
        return outliers.stream()
                .map(outlier -> new JsonObject()
                        .put("value_um", outlier.um())
                        .put("rule", outlier.rule().word()))
                .toList();
    }

    private static String table(ThicknessSurvey survey) {
        if (survey.zones().isEmpty()) {
            return "No readings yet. Add them with: add readings VISIT FILE.csv\n";
        }
        TextTable table = new TextTable()
                .left("zone")
                .right("readings", "spots", "mean um", "sd", "95 % interval", "median", "min", "max", "mean mil")
                .left("remarks");
        for (ZoneThickness zone : survey.zones()) {
            table.row(
                    zone.zone().value(),
                    Integer.toString(zone.readings()),
                    Integer.toString(zone.valueSpots()),
                    CliText.number(zone.meanUm(), 0),
                    CliText.number(zone.sdUm(), 0),
                    zone.showsInterval()
                            ? CliText.number(zone.ci95LowUm(), 0) + " to " + CliText.number(zone.ci95HighUm(), 0)
                            : CliText.UNKNOWN,
                    CliText.number(zone.medianUm(), 0),
                    CliText.number(zone.minUm(), 0),
                    CliText.number(zone.maxUm(), 0),
                    zone.meanUm().isPresent() ? CliText.number(zone.meanUm().getAsDouble() / MIL, 1) : CliText.UNKNOWN,
                    remarks(zone));
        }
        return table.text();
    }

    private static String remarks(ZoneThickness zone) {
        StringBuilder text = new StringBuilder();
        append(text, zone.readable() ? 0 : 1, "gauge cannot read this material", false);
        append(
                text,
                zone.ci95LowUm().isPresent() && !zone.showsInterval() ? 1 : 0,
                "too few spots for an interval",
                false);
        append(text, zone.excluded(), "excluded", true);
        append(text, zone.noMetal(), "without metal", true);
        append(text, zone.overRange(), "over range", true);
        for (Outlier outlier : zone.outliers()) {
            append(
                    text,
                    1,
                    "outlier " + CliText.number(outlier.um(), 0) + " um ("
                            + outlier.rule().word() + ")",
                    false);
        }
        return text.toString();
    }

    private static void append(StringBuilder text, int count, String what, boolean counted) {
        if (count > 0) {
            text.append(text.isEmpty() ? "" : ", ")
                    .append(counted ? count + " " : "")
                    .append(what);
        }
    }
}
