package quarterlight.cli;

import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.car.ZoneCatalog;
import quarterlight.coverage.Coverage;
import quarterlight.coverage.Gap;
import quarterlight.rust.RustReport;
import quarterlight.store.VisitProblem;
import quarterlight.table.CoverageTable;
import quarterlight.table.JsonObject;
import quarterlight.thickness.ThicknessSurvey;
import quarterlight.visit.VisitRecord;

/** {@code gaps}: what evidence is missing, in the order of a walk round the car. */
final class GapsVerb implements Verb {
    private final Surroundings around;

    GapsVerb(Surroundings around) {
        this.around = around;
    }

    @Override
    public CommandSpec spec() {
        return Words.verb("gaps", "what evidence is missing, in the order of a walk round the car")
                .addPositional(Words.visit())
                .addOption(Words.json());
    }

    @Override
    public int run(ParseResult call) throws VisitProblem {
        VisitRecord visit = Visits.read(Words.pathAt(call, 0));
        ZoneCatalog catalog = around.zones().get();
        RustReport rust = RustReport.of(visit, catalog, around.areas().of(Words.pathAt(call, 0), visit.facts()));
        List<Gap> gaps = Coverage.gaps(visit, catalog, ThicknessSurvey.of(visit, catalog), rust, CoverageTable.load());
        around.console().print(Words.isJson(call) ? json(gaps).text() : table(gaps));
        return Exit.DONE;
    }

    private static JsonObject json(List<Gap> gaps) {
        return new JsonObject().put("gaps", gaps.stream().map(GapsVerb::gap).toList());
    }

    static JsonObject gap(Gap gap) {
        return new JsonObject()
                .put("zone", gap.zone().id())
                .put("lacks", gap.lacks().word())
                .put("want", gap.want())
                .put("have", gap.have())
                .put("part", gap.part())
                .put("excuse", gap.excuse())
                .put("why", gap.why());
    }

    private static String table(List<Gap> gaps) {
        if (gaps.isEmpty()) {
            return "Nothing is missing of what a visit must bring.\n";
        }
        TextTable table =
                new TextTable().left("zone", "lacks").right("have", "want").left("why");
        for (Gap gap : gaps) {
            table.row(
                    gap.zone().id().value(),
                    gap.lacks().word() + gap.part().map(part -> " of " + part).orElse(""),
                    Integer.toString(gap.have()),
                    Integer.toString(gap.want()),
                    gap.why()
                            + gap.excuse()
                                    .map(text -> " Not looked at: " + text)
                                    .orElse(""));
        }
        return table.text() + "\n" + Shown.count(gaps.size(), "gap", "gaps") + ".\n";
    }
}
