package quarterlight.cli.analysis;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.cli.call.CallRefused;
import quarterlight.cli.call.CliContext;
import quarterlight.cli.call.CliOptions;
import quarterlight.cli.call.Exit;
import quarterlight.cli.call.OwnLists;
import quarterlight.cli.call.Verb;
import quarterlight.cli.call.Visits;
import quarterlight.cli.text.CliText;
import quarterlight.cli.text.TextTable;
import quarterlight.marks.Contradiction;
import quarterlight.marks.MarksReport;
import quarterlight.marks.code.DateCandidate;
import quarterlight.marks.code.DatePatterns;
import quarterlight.marks.judge.BuildWindow;
import quarterlight.marks.judge.DateText;
import quarterlight.marks.judge.JudgedFeature;
import quarterlight.marks.judge.JudgedMark;
import quarterlight.marks.judge.NumberMatch;
import quarterlight.marks.order.DaySet;
import quarterlight.store.problem.VisitProblem;
import quarterlight.table.TableUnreadable;
import quarterlight.table.json.JsonObject;
import quarterlight.table.list.DatePatternTable;
import quarterlight.units.Worded;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.pin.RecordId;

/** {@code dates}: every mark decoded and whether it fits, the order of the dates, features, and what does not go together. */
public final class DatesVerb implements Verb {
    private static final int MAX_SHOWN = 3;

    private final CliContext around;

    public DatesVerb(CliContext around) {
        this.around = around;
    }

    @Override
    public CommandSpec spec() {
        return CliOptions.verb("dates", "decode every mark and tell whether it fits the car")
                .addPositional(CliOptions.visit())
                .addOption(CliOptions.pathOption(
                        "--patterns",
                        "FILE.csv",
                        "your own date patterns, in addition to the built-in ones (name, form, example, reading)"))
                .addOption(CliOptions.json());
    }

    @Override
    public int run(ParseResult call) throws VisitProblem, CallRefused {
        DatePatterns patterns = OwnLists.patterns(around, CliOptions.pathAt(call, 0));
        if (call.hasMatchedOption("--patterns")) {
            try {
                patterns = patterns.with(DatePatternTable.read(call.matchedOptionValue("--patterns", around.log())));
            } catch (TableUnreadable e) {
                throw new CallRefused(e.getMessage());
            }
        }
        VisitRecord visit = Visits.read(around, CliOptions.pathAt(call, 0));
        MarksReport report = MarksReport.of(visit, patterns);
        around.console()
                .print(
                        CliOptions.isJson(call)
                                ? json(report).text()
                                : OwnLists.remark(CliOptions.pathAt(call, 0)) + table(report));
        return Exit.DONE;
    }

    static JsonObject json(MarksReport report) {
        return new JsonObject()
                .put("build_window", report.window().map(DatesVerb::window))
                .put(
                        "marks",
                        report.marks().stream().map(mark -> mark(mark, report)).toList())
                .put("built_left", report.order().built().map(DatesVerb::days))
                .put(
                        "features",
                        report.features().stream().map(DatesVerb::feature).toList())
                .put(
                        "contradictions",
                        report.contradictions().stream()
                                .map(DatesVerb::contradiction)
                                .toList())
                .put("cautions", List.of(MarksReport.caution()));
    }

    private static JsonObject window(BuildWindow window) {
        return new JsonObject().put("from", window.first()).put("to", window.last());
    }

    private static JsonObject mark(JudgedMark mark, MarksReport report) {
        return new JsonObject()
                .put("part", mark.mark().part())
                .put("kind", mark.mark().kind().word())
                .put("text", mark.mark().text())
                .put("stage", mark.mark().stage().map(Worded::word))
                .put("zone", mark.mark().zone())
                .put("read", mark.text())
                .put("witnesses", mark.witnesses())
                .put(
                        "candidates",
                        mark.candidates().stream().map(DatesVerb::candidate).toList())
                .put("days_left", left(mark.row(), report))
                .put("verdict", mark.verdict().word())
                .put("why", mark.why())
                .put("decoded", mark.decoded())
                .put("matches", mark.matches().stream().map(DatesVerb::match).toList());
    }

    private static JsonObject candidate(DateCandidate date) {
        return new JsonObject().put("from", date.from()).put("to", date.to()).put("pattern", date.pattern());
    }

    private static Optional<List<JsonObject>> left(RecordId row, MarksReport report) {
        return Optional.ofNullable(report.order().left().get(row)).map(DatesVerb::days);
    }

    private static List<JsonObject> days(DaySet days) {
        return days.stretches().stream()
                .map(stretch -> new JsonObject().put("from", stretch.first()).put("to", stretch.last()))
                .toList();
    }

    private static JsonObject match(NumberMatch match) {
        return new JsonObject()
                .put("against", match.against())
                .put("expected", match.expected())
                .put("state", match.state().word())
                .put("unread_places", match.unread())
                .put("differing_places", match.differing());
    }

    private static JsonObject feature(JudgedFeature feature) {
        return new JsonObject()
                .put("feature", feature.feature().feature())
                .put("zone", feature.feature().zone())
                .put("from", feature.feature().from())
                .put("to", feature.feature().to())
                .put("fitted", feature.feature().fitted())
                .put("verdict", feature.verdict().word())
                .put("why", feature.why())
                .put("would_belong", feature.instead());
    }

    static JsonObject contradiction(Contradiction contradiction) {
        return new JsonObject()
                .put("kind", contradiction.kind().word())
                .put("what", contradiction.what())
                .put("zone", contradiction.zone())
                .put("sentence", contradiction.sentence());
    }

    private static String table(MarksReport report) {
        StringBuilder out = new StringBuilder(report.window()
                .map(window -> "Built " + DateText.of(window) + " as claimed.\n\n")
                .orElse("No build date or model year is given, so the dates cannot be judged.\n\n"));
        if (report.marks().isEmpty()) {
            out.append("No marks yet. Add them with: add marks VISIT FILE.csv\n");
        } else {
            TextTable marks = new TextTable().left("part", "kind", "text", "can mean", "verdict");
            report.marks().forEach(mark -> row(marks, mark));
            out.append(marks.text()).append('\n');
            report.marks().forEach(mark -> out.append(reason(mark)));
        }
        if (!report.features().isEmpty()) {
            TextTable features = new TextTable().left("feature", "fitted", "verdict", "why");
            report.features()
                    .forEach(feature -> features.row(
                            feature.feature().feature(),
                            feature.feature()
                                    .fitted()
                                    .map(yes -> yes ? "yes" : "no")
                                    .orElse(CliText.UNKNOWN),
                            feature.verdict().word(),
                            feature.why()));
            out.append('\n').append(features.text());
        }
        out.append('\n');
        if (report.contradictions().isEmpty()) {
            out.append("No mark or feature contradicts the car as claimed.\n");
        } else {
            out.append("Contradictions:\n");
            report.contradictions()
                    .forEach(c -> out.append("  ").append(c.sentence()).append('\n'));
        }
        return out.append('\n').append(MarksReport.caution()).append('\n').toString();
    }

    private static String reason(JudgedMark mark) {
        String decoded = mark.decoded().isEmpty() ? "" : " " + String.join(". ", mark.decoded()) + ".";
        return mark.mark().part() + ", " + mark.mark().text() + ": " + mark.why() + decoded + "\n";
    }

    private static void row(TextTable table, JudgedMark mark) {
        List<String> dates =
                mark.candidates().stream().map(DateText::of).distinct().toList();
        String shown = dates.stream().limit(MAX_SHOWN).collect(Collectors.joining("; "));
        String more = dates.size() > MAX_SHOWN ? " and " + (dates.size() - MAX_SHOWN) + " more" : "";
        table.row(
                mark.mark().part(),
                mark.mark().kind().word(),
                mark.mark().text(),
                dates.isEmpty() ? CliText.UNKNOWN : shown + more,
                mark.verdict().word());
    }
}
