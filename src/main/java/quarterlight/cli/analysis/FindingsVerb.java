package quarterlight.cli.analysis;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.car.ZoneId;
import quarterlight.cli.call.CallRefused;
import quarterlight.cli.call.CliContext;
import quarterlight.cli.call.CliOptions;
import quarterlight.cli.call.Exit;
import quarterlight.cli.call.OwnLists;
import quarterlight.cli.call.Verb;
import quarterlight.cli.call.Visits;
import quarterlight.cli.text.TextTable;
import quarterlight.edit.EditRefused;
import quarterlight.edit.matter.MatterEdits;
import quarterlight.findings.Findings;
import quarterlight.matters.Checked;
import quarterlight.matters.Matter;
import quarterlight.matters.Matters;
import quarterlight.matters.NextLook;
import quarterlight.matters.rule.EvidenceRow;
import quarterlight.matters.rule.MatterRule;
import quarterlight.matters.rule.Safety;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.table.TableUnreadable;
import quarterlight.table.json.JsonObject;
import quarterlight.units.Worded;
import quarterlight.visit.MatterDecision;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.statement.Severity;

/** {@code findings}: what matters about the car, most severe first, with the rule that ranks it, and what to look at next. */
public final class FindingsVerb implements Verb {
    private static final String BUYER = "--for-buyer";
    private static final String SET = "--set";
    private static final String BECAUSE = "--because";
    private static final String TAKE_BACK = "--take-back";

    private final CliContext around;

    public FindingsVerb(CliContext around) {
        this.around = around;
    }

    @Override
    public CommandSpec spec() {
        return CliOptions.verb(
                        "findings",
                        "what matters, most severe first, with the rule behind it, and what to look at next")
                .addPositional(CliOptions.visit())
                .addOption(OptionSpec.builder(BUYER)
                        .description("only from what a buyer may see, as on the pages")
                        .build())
                .addOption(OptionSpec.builder(SET)
                        .paramLabel("ID=SEVERITY")
                        .type(String.class)
                        .description("set a severity of your own: grave, major, minor or note")
                        .build())
                .addOption(OptionSpec.builder(BECAUSE)
                        .paramLabel("REASON")
                        .type(String.class)
                        .description("why, with " + SET)
                        .build())
                .addOption(OptionSpec.builder(TAKE_BACK)
                        .paramLabel("ID")
                        .type(String.class)
                        .description("let the rule's severity hold again")
                        .build())
                .addOption(CliOptions.json());
    }

    @Override
    public int run(ParseResult call) throws VisitProblem, CallRefused, EditRefused {
        Path folder = CliOptions.pathAt(call, 0);
        change(call, folder);
        VisitRecord all = Visits.read(around, folder);
        VisitRecord visit = call.hasMatchedOption(BUYER) ? all.forBuyer() : all;
        Matters matters = matters(folder, OwnLists.findings(around, folder, visit));
        around.console().print(CliOptions.isJson(call) ? json(matters).text() : words(matters));
        return Exit.DONE;
    }

    private void change(ParseResult call, Path folder) throws VisitProblem, CallRefused, EditRefused {
        if (call.hasMatchedOption(BECAUSE) && !call.hasMatchedOption(SET)) {
            throw new CallRefused(BECAUSE + " goes with " + SET + " ID=SEVERITY");
        }
        if (!call.hasMatchedOption(SET) && !call.hasMatchedOption(TAKE_BACK)) {
            return;
        }
        try (VisitStore store = around.visits().forEditing(folder)) {
            MatterEdits edits = new MatterEdits(store);
            if (call.hasMatchedOption(TAKE_BACK)) {
                Matters matters = matters(folder, OwnLists.findings(around, folder, store.read()));
                edits.takeBack(matters, call.matchedOptionValue(TAKE_BACK, ""));
            }
            if (call.hasMatchedOption(SET)) {
                String set = call.matchedOptionValue(SET, "");
                int at = set.lastIndexOf('=');
                Severity severity = Worded.find(Severity.class, set.substring(at + 1))
                        .filter(found -> at > 0)
                        .orElseThrow(() -> new CallRefused(SET + " takes ID=SEVERITY, the severity one of "
                                + Worded.words(Severity.class) + ", not " + set));
                Matters matters = matters(folder, OwnLists.findings(around, folder, store.read()));
                edits.set(matters, set.substring(0, at), severity, call.matchedOptionValue(BECAUSE, ""));
            }
        }
    }

    private Matters matters(Path folder, Findings car) throws CallRefused {
        try {
            return OwnLists.work(around).matters(folder, car);
        } catch (TableUnreadable e) {
            throw new CallRefused(e.getMessage());
        }
    }

    private static String words(Matters matters) {
        StringBuilder out = new StringBuilder();
        if (!matters.safety().isEmpty()) {
            out.append("Before anyone drives or lifts it\n");
            for (Matter matter : matters.safety()) {
                Safety safety = matter.safety().orElseThrow();
                out.append("  ")
                        .append(safety.subject())
                        .append(" (")
                        .append(matter.place())
                        .append("): ");
                out.append(safety.caution()).append('\n');
            }
            out.append('\n');
        }
        TextTable table = new TextTable().left("", "severity", "what", "where", "id");
        for (Matter matter : matters.all()) {
            table.row(
                    matter.letter().map(String::valueOf).orElse(""),
                    matter.severity().word() + (matter.isOverridden() ? " (set)" : ""),
                    matter.sentence(),
                    matter.place(),
                    matter.id());
        }
        out.append(matters.all().isEmpty() ? "Nothing that was looked at matters.\n" : table.text());
        out.append('\n').append(matters.checked().sentence()).append('\n');
        if (!matters.next().isEmpty()) {
            out.append("\nTo look at next, what would change the picture most first\n");
            int number = 1;
            for (NextLook look : matters.next()) {
                out.append(number++)
                        .append(". ")
                        .append(look.what())
                        .append(' ')
                        .append(look.why())
                        .append('\n');
            }
        }
        return out.toString();
    }

    static JsonObject json(Matters matters) {
        return new JsonObject()
                .put("rule_version", MatterRule.VERSION)
                .put("matters", matters.all().stream().map(FindingsVerb::matter).toList())
                .put("safety", matters.safety().stream().map(Matter::id).toList())
                .put("checked", checked(matters.checked()))
                .put("next", matters.next().stream().map(FindingsVerb::next).toList());
    }

    private static JsonObject matter(Matter matter) {
        return new JsonObject()
                .put("id", matter.id())
                .put("letter", matter.letter().map(String::valueOf))
                .put("severity", matter.severity().word())
                .put("severity_by_rule", matter.ruled().word())
                .put("kind", matter.kind().word())
                .put("rule", matter.rule().word())
                .put("why", matter.why())
                .put("place", matter.place())
                .put("zones", matter.zones().stream().map(ZoneId::value).toList())
                .put("text", matter.sentence())
                .put("safety", matter.safety().map(Safety::word))
                .put("caution", matter.safety().map(Safety::caution))
                .put("decision", decision(matter))
                .put(
                        "evidence",
                        matter.evidence().stream().map(FindingsVerb::evidence).toList())
                .put(
                        "photos",
                        matter.photos().stream().map(photo -> photo.value()).toList());
    }

    private static Optional<JsonObject> decision(Matter matter) {
        return matter.decision().map((MatterDecision decided) -> new JsonObject()
                .put("severity", decided.severity().word())
                .put("reason", decided.reason())
                .put("holds", matter.isOverridden()));
    }

    private static JsonObject evidence(EvidenceRow row) {
        return new JsonObject()
                .put("table", row.table())
                .put("row", row.row().map(id -> id.value()))
                .put("text", row.text())
                .put("photos", row.photos().stream().map(photo -> photo.value()).toList());
    }

    private static JsonObject checked(Checked checked) {
        return new JsonObject()
                .put("zones", checked.zones())
                .put("looked_at", checked.lookedAt())
                .put("panels", checked.panels())
                .put("measured", checked.measured())
                .put("structural_zones", checked.structural())
                .put("structural_not_checked", checked.structuralUnseen())
                .put("text", checked.sentence());
    }

    private static JsonObject next(NextLook look) {
        return new JsonObject()
                .put("what", look.what())
                .put("why", look.why())
                .put("zones", look.zones().stream().map(ZoneId::value).toList())
                .put("could_turn_up", look.turns().word())
                .put("caution", look.caution());
    }
}
