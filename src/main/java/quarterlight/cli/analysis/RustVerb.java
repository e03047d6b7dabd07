package quarterlight.cli.analysis;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.cli.call.CliContext;
import quarterlight.cli.call.CliOptions;
import quarterlight.cli.call.Exit;
import quarterlight.cli.call.Verb;
import quarterlight.cli.call.Visits;
import quarterlight.cli.text.CliText;
import quarterlight.cli.text.TextTable;
import quarterlight.rust.RiDegree;
import quarterlight.rust.RustReport;
import quarterlight.rust.TraceArea;
import quarterlight.rust.ZoneRust;
import quarterlight.rust.need.RepairNeed;
import quarterlight.store.problem.VisitProblem;
import quarterlight.table.json.JsonObject;
import quarterlight.units.Area;
import quarterlight.visit.VisitRecord;

/** {@code rust}: rust extent, grades, perforations and repair need of each zone. */
public final class RustVerb implements Verb {
    private final CliContext around;

    public RustVerb(CliContext around) {
        this.around = around;
    }

    @Override
    public CommandSpec spec() {
        return CliOptions.verb("rust", "rust extent, grades, holes and repair need for each zone")
                .addPositional(CliOptions.visit())
                .addOption(CliOptions.json());
    }

    @Override
    public int run(ParseResult call) throws VisitProblem {
        VisitRecord record = Visits.read(around, CliOptions.pathAt(call, 0));
        RustReport report = RustReport.of(
                record,
                around.zones().get(),
                around.areas().of(CliOptions.pathAt(call, 0), record.facts()).areas());
        around.console().print(CliOptions.isJson(call) ? json(report, record).text() : table(report));
        return Exit.DONE;
    }

    static JsonObject json(RustReport report, VisitRecord visit) {
        return new JsonObject()
                .put("zones", report.zones().stream().map(RustVerb::zone).toList())
                .put(
                        "traces",
                        report.traces().stream()
                                .map(trace -> trace(trace, visit))
                                .toList())
                .put("ri_rule", RiDegree.rule());
    }

    private static JsonObject zone(ZoneRust zone) {
        return new JsonObject()
                .put("zone", zone.zone().id())
                .put("looked_at", zone.lookedAt())
                .put("rust_mm2", zone.rust().map(Area::mm2))
                .put("rust_sd_mm2", zone.rustSdMm2())
                .put("zone_mm2", zone.zoneArea().map(Area::mm2))
                .put("percent", zone.percent())
                .put("rust_grade_d610", zone.gradeD610())
                .put("spread_d610_suggested", zone.spread().map(spread -> spread.letter()))
                .put("ri_iso4628", zone.ri())
                .put("holes", zone.holes())
                .put("largest_hole_mm2", zone.largestHole().map(Area::mm2))
                .put("need", zone.need().map(RepairNeed::word))
                .put("need_by_eye", zone.needByEye().map(RepairNeed::word))
                .put("reasons", zone.reasons())
                .put("cautions", zone.cautions())
                .put("remarks", zone.remarks());
    }

    private static JsonObject trace(TraceArea trace, VisitRecord visit) {
        return new JsonObject()
                .put("photo", trace.photo().value())
                .put("file", visit.photo(trace.photo()).map(photo -> photo.file()
                        .name()))
                .put("kind", trace.kind().word())
                .put("zone", trace.zone())
                .put("area_mm2", trace.area().map(Area::mm2))
                .put("area_sd_mm2", trace.sdMm2())
                .put("remarks", trace.remarks());
    }

    private static String table(RustReport report) {
        List<ZoneRust> told = report.zones().stream()
                .filter(zone -> zone.lookedAt() || zone.need().isPresent())
                .toList();
        if (told.isEmpty()) {
            return "No zone has been checked for rust yet. Add traces, or statements of the kind no rust.\n";
        }
        TextTable table = new TextTable()
                .left("zone")
                .right("rust mm\u00b2", "\u00b1", "zone mm\u00b2", "percent")
                .left("D610")
                .right("Ri", "holes", "largest mm\u00b2")
                .left("need", "why");
        Set<String> cautions = new LinkedHashSet<>();
        for (ZoneRust zone : told) {
            table.row(
                    zone.zone().id().value(),
                    area(zone.rust().map(Area::mm2).map(OptionalDouble::of).orElse(OptionalDouble.empty())),
                    area(zone.rustSdMm2()),
                    area(zone.zoneArea().map(Area::mm2).map(OptionalDouble::of).orElse(OptionalDouble.empty())),
                    CliText.number(zone.percent(), 2),
                    CliText.text(zone.gradeInWords()),
                    CliText.number(zone.ri()),
                    CliText.number(zone.holes()),
                    area(zone.largestHole()
                            .map(Area::mm2)
                            .map(OptionalDouble::of)
                            .orElse(OptionalDouble.empty())),
                    need(zone),
                    zone.reasons().stream().findFirst().orElse(""));
            cautions.addAll(zone.cautions());
        }
        StringBuilder out = new StringBuilder(table.text());
        int unseen = report.zones().size() - told.size();
        out.append('\n').append(CliText.count(unseen, "zone was", "zones were")).append(" not checked for rust. ");
        out.append("\u00b1 is one standard deviation, from the marking and from a tilt that the scale cannot show. ");
        out.append("Grades: ASTM D610 (the letter is suggested); ")
                .append(RiDegree.rule())
                .append(".\n");
        List<String> lines = new ArrayList<>(cautions);
        lines.forEach(line -> out.append(line).append('\n'));
        return out.toString();
    }

    private static String area(OptionalDouble mm2) {
        return CliText.number(mm2, 0);
    }

    /** What is measured, else what was seen, told apart. */
    private static String need(ZoneRust zone) {
        Optional<String> byEye = zone.needByEye().map(need -> need.word() + " by eye");
        String measured = zone.lookedAt() ? CliText.text(zone.need().map(RepairNeed::word)) : "not looked at";
        return byEye.map(seen -> zone.need().isPresent() ? measured + "; " + seen : seen)
                .orElse(measured);
    }
}
