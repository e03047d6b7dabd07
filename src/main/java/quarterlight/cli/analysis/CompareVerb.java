package quarterlight.cli.analysis;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.cli.call.CallRefused;
import quarterlight.cli.call.Exit;
import quarterlight.cli.call.OwnLists;
import quarterlight.cli.call.Surroundings;
import quarterlight.cli.call.Verb;
import quarterlight.cli.call.Visits;
import quarterlight.cli.call.Words;
import quarterlight.cli.text.Shown;
import quarterlight.cli.text.TextTable;
import quarterlight.compare.CarSummary;
import quarterlight.compare.ComparedZone;
import quarterlight.compare.Comparison;
import quarterlight.compare.Contrast;
import quarterlight.compare.CountComparison;
import quarterlight.compare.CountSummary;
import quarterlight.compare.Side;
import quarterlight.compare.ZoneFacts;
import quarterlight.diagram.file.DiagramRefused;
import quarterlight.findings.ClaimedAndFound;
import quarterlight.findings.Findings;
import quarterlight.finish.FinishCautions;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.page.print.Paper;
import quarterlight.rust.ZoneRust;
import quarterlight.rust.need.RepairNeed;
import quarterlight.store.problem.VisitProblem;
import quarterlight.table.TableUnreadable;
import quarterlight.table.json.JsonObject;
import quarterlight.thickness.ZoneThickness;
import quarterlight.units.Area;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Judgment;
import quarterlight.visit.statement.Origin;

/** {@code compare}: two cars side by side. */
public final class CompareVerb implements Verb {
    private final Surroundings around;

    public CompareVerb(Surroundings around) {
        this.around = around;
    }

    @Override
    public CommandSpec spec() {
        return Words.verb("compare", "compare two cars side by side")
                .addPositional(Words.path(0, "A", "folder of one visit"))
                .addPositional(Words.path(1, "B", "folder of the other"))
                .addOption(Words.pathOption("--out", "FOLDER", "also write compare.pdf and compare.html there"))
                .addOption(Words.json());
    }

    @Override
    public int run(ParseResult call) throws CallRefused, VisitProblem, IOException {
        Path visitA = Words.pathAt(call, 0);
        Path visitB = Words.pathAt(call, 1);
        Findings a = findings(visitA);
        Findings b = findings(visitB);
        Comparison comparison = compared(a, b);
        List<Path> made = call.hasMatchedOption("--out")
                ? pages(visitA, a, visitB, b, call.matchedOptionValue("--out", Path.of("")))
                : List.of();
        if (Words.isJson(call)) {
            around.console()
                    .print(json(comparison)
                            .put("claims", new JsonObject().put("a", claims(a)).put("b", claims(b)))
                            .put("made", made)
                            .text());
        } else {
            around.console().print(table(comparison));
            made.forEach(file -> around.console().print("Made " + file + "\n"));
        }
        return Exit.DONE;
    }

    private static List<JsonObject> claims(Findings car) {
        return ClaimedAndFound.of(car).stream()
                .map(row -> new JsonObject()
                        .put("text", row.claim().text())
                        .put("by", row.claim().by().word())
                        .put("zone", row.claim().zone())
                        .put("part", row.claim().part())
                        .put("about", row.claim().about())
                        .put("proposed", row.proposed().word())
                        .put("judged", row.claim().judged().map(Judgment::word))
                        .put("found", row.found()))
                .toList();
    }

    /** Makes the comparison of two visits as pages in a folder. */
    public List<Path> pages(Path visitA, Path visitB, Path out) throws CallRefused, VisitProblem, IOException {
        return pages(visitA, findings(visitA), visitB, findings(visitB), out);
    }

    private List<Path> pages(Path visitA, Findings a, Path visitB, Findings b, Path out)
            throws CallRefused, IOException {
        if (Files.exists(out) && !Files.isDirectory(out)) {
            throw new CallRefused(out + " is a file; name a folder for the pages");
        }
        try {
            return OwnLists.work(around).comparisonPages(visitA, a, visitB, b, out, Paper.A4);
        } catch (DiagramRefused | TableUnreadable e) {
            throw new CallRefused(e.getMessage());
        }
    }

    private Comparison compared(Findings a, Findings b) throws CallRefused {
        try {
            return OwnLists.work(around).compared(a, b);
        } catch (TableUnreadable e) {
            throw new CallRefused(e.getMessage());
        }
    }

    Findings findings(Path visit) throws VisitProblem, CallRefused {
        return OwnLists.findings(around, visit, Visits.read(around, visit).forBuyer());
    }

    static JsonObject json(Comparison comparison) {
        return new JsonObject()
                .put("cars", List.of(comparison.a().name(), comparison.b().name()))
                .put("zones", comparison.zones().stream().map(CompareVerb::zone).toList())
                .put("counted_zones", comparison.counted())
                .put("refinished", counts(comparison.refinished()))
                .put("repaired", counts(comparison.repaired()))
                .put("summary", new JsonObject().put("a", car(comparison.a())).put("b", car(comparison.b())))
                .put(
                        "trials",
                        comparison.trials().stream()
                                .map(trial -> new JsonObject()
                                        .put("item", trial.item())
                                        .put("a", trial.a().map(t -> t.result().word()))
                                        .put("b", trial.b().map(t -> t.result().word())))
                                .toList())
                .put("cautions", FinishCautions.texts());
    }

    private static JsonObject zone(ComparedZone zone) {
        return new JsonObject()
                .put("zone", zone.zone().id())
                .put("a", facts(zone.a()))
                .put("b", facts(zone.b()))
                .put(
                        "contrasts",
                        zone.contrasts().stream().map(CompareVerb::contrast).toList());
    }

    private static JsonObject facts(ZoneFacts facts) {
        return new JsonObject()
                .put("readings", facts.thickness().map(ZoneThickness::readings))
                .put("spots", facts.thickness().map(ZoneThickness::valueSpots))
                .put("mean_um", facts.thickness().flatMap(zone -> zone.meanUm().stream()
                        .boxed()
                        .findFirst()))
                .put("finish_evidence", facts.finishEvidence())
                .put("refinish_score", facts.history().map(ZoneHistory::refinishScore))
                .put("repair_score", facts.history().map(ZoneHistory::repairScore))
                .put("looked_at", facts.rust().map(ZoneRust::lookedAt))
                .put("rust_mm2", facts.rust().flatMap(ZoneRust::rust).map(Area::mm2))
                .put("percent", facts.rust().flatMap(zone -> zone.percent().stream()
                        .boxed()
                        .findFirst()))
                .put("rust_grade_d610", facts.rust().flatMap(zone -> zone.gradeD610().stream()
                        .boxed()
                        .findFirst()))
                .put("holes", facts.rust().flatMap(zone -> zone.holes().stream()
                        .boxed()
                        .findFirst()))
                .put("need", facts.rust().flatMap(ZoneRust::need).map(RepairNeed::word))
                .put(
                        "statements",
                        facts.statements().stream()
                                .map(statement -> new JsonObject()
                                        .put("origin", statement.what().origin().map(Origin::word))
                                        .put(
                                                "condition",
                                                statement.what().condition().map(Condition::word))
                                        .put("part", statement.details().part())
                                        .put("text", statement.text())
                                        .put("severity", statement.severity().map(s -> s.word())))
                                .toList())
                .put("gaps", facts.gaps().stream().map(GapsVerb::gap).toList());
    }

    private static JsonObject contrast(Contrast contrast) {
        return new JsonObject()
                .put("aspect", contrast.aspect().word())
                .put("speaks_for", contrast.speaksFor().map(CompareVerb::side))
                .put("missing", contrast.missing().map(CompareVerb::side))
                .put("text", contrast.text());
    }

    private static String side(Side side) {
        return side == Side.A ? "a" : "b";
    }

    private static JsonObject counts(CountComparison counts) {
        return new JsonObject()
                .put("a", count(counts.a()))
                .put("b", count(counts.b()))
                .put("p_a_fewer", counts.chanceAFewer())
                .put("p_equal", counts.chanceEqual())
                .put("p_b_fewer", counts.chanceBFewer());
    }

    private static JsonObject count(CountSummary count) {
        return new JsonObject()
                .put("mean", count.mean())
                .put("low", count.low())
                .put("high", count.high());
    }

    private static JsonObject car(CarSummary car) {
        JsonObject needs = new JsonObject();
        for (RepairNeed need : RepairNeed.values()) {
            needs.put(need.word(), car.needs().getOrDefault(need, 0));
        }
        return new JsonObject()
                .put("name", car.name())
                .put("panels", car.panels())
                .put("measured", car.measured())
                .put("rust_looked_at", car.rustLookedAt())
                .put("holes", car.holes())
                .put("needs", needs)
                .put("gaps", car.gaps().size())
                .put("dates_judged", car.datesJudged())
                .put(
                        "date_contradictions",
                        car.dateContradictions().stream()
                                .map(DatesVerb::contradiction)
                                .toList())
                .put("only_here", car.onlyHere().stream().map(zone -> zone.id()).toList());
    }

    private static String table(Comparison comparison) {
        StringBuilder out = new StringBuilder();
        out.append("A: ")
                .append(comparison.a().name())
                .append("\nB: ")
                .append(comparison.b().name())
                .append("\n\n");
        TextTable table = new TextTable()
                .left("zone")
                .right("um A", "um B", "refinish A", "B", "repair A", "B", "rust % A", "B")
                .left("need A", "B");
        for (ComparedZone zone : comparison.zones()) {
            if (isKnown(zone.a()) || isKnown(zone.b())) {
                table.row(
                        zone.zone().id().value(),
                        mean(zone.a()),
                        mean(zone.b()),
                        Shown.text(zone.a().history().map(h -> ZoneHistory.shown(h.refinishScore()))),
                        Shown.text(zone.b().history().map(h -> ZoneHistory.shown(h.refinishScore()))),
                        Shown.text(zone.a().history().map(h -> ZoneHistory.shown(h.repairScore()))),
                        Shown.text(zone.b().history().map(h -> ZoneHistory.shown(h.repairScore()))),
                        rust(zone.a()),
                        rust(zone.b()),
                        need(zone.a()),
                        need(zone.b()));
            }
        }
        out.append(table.text()).append('\n');
        out.append(words("refinished", comparison, comparison.refinished()));
        out.append(words("repaired over filler", comparison, comparison.repaired()));
        dates(out, "A", comparison.a());
        dates(out, "B", comparison.b());
        speaks(out, "A", comparison.speakingFor(Side.A), Side.A);
        speaks(out, "B", comparison.speakingFor(Side.B), Side.B);
        out.append('\n').append(String.join(" ", FinishCautions.texts())).append('\n');
        return out.toString();
    }

    private static boolean isKnown(ZoneFacts facts) {
        return facts.thickness().isPresent()
                || facts.history().isPresent()
                || facts.rust().map(ZoneRust::lookedAt).orElse(false);
    }

    private static String mean(ZoneFacts facts) {
        return facts.thickness().map(zone -> Shown.number(zone.meanUm(), 0)).orElse(Shown.UNKNOWN);
    }

    private static String rust(ZoneFacts facts) {
        return facts.rust().map(zone -> Shown.number(zone.percent(), 2)).orElse(Shown.UNKNOWN);
    }

    private static String need(ZoneFacts facts) {
        return Shown.text(facts.rust().flatMap(ZoneRust::need).map(RepairNeed::word));
    }

    private static String words(String what, Comparison comparison, CountComparison counts) {
        return "Outer panels " + what + ", of the " + comparison.counted().size() + " that both have: A "
                + range(counts.a()) + ", B " + range(counts.b()) + ". A has fewer with "
                + percent(counts.chanceAFewer()) + ", equal with " + percent(counts.chanceEqual())
                + ", B has fewer with " + percent(counts.chanceBFewer()) + ".\n";
    }

    private static String range(CountSummary count) {
        return Shown.number(count.mean(), 1) + " (" + count.low() + " to " + count.high() + ")";
    }

    private static String percent(double share) {
        return Shown.number(100 * share, 0) + " %";
    }

    private static void dates(StringBuilder out, String name, CarSummary car) {
        out.append("Dates, numbers and features on ")
                .append(name)
                .append(": ")
                .append(car.datesJudged())
                .append(" judged, ")
                .append(Shown.count(car.dateContradictions().size(), "contradiction", "contradictions"))
                .append(".\n");
        car.dateContradictions()
                .forEach(c -> out.append("  ").append(c.sentence()).append('\n'));
    }

    private static void speaks(StringBuilder out, String name, List<ComparedZone> zones, Side side) {
        if (zones.isEmpty()) {
            return;
        }
        out.append("\nFor ").append(name).append(" speaks:\n");
        for (ComparedZone zone : zones) {
            String said = zone.contrasts().stream()
                    .filter(contrast ->
                            contrast.speaksFor().filter(side::equals).isPresent())
                    .map(Contrast::text)
                    .collect(Collectors.joining("; "));
            out.append("  ")
                    .append(zone.zone().label())
                    .append(": ")
                    .append(said)
                    .append('\n');
        }
    }
}
