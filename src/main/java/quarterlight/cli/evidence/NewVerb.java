package quarterlight.cli.evidence;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.cli.call.CliContext;
import quarterlight.cli.call.CliOptions;
import quarterlight.cli.call.Exit;
import quarterlight.cli.call.Verb;
import quarterlight.edit.EditRefused;
import quarterlight.edit.fact.FactEdits;
import quarterlight.store.problem.VisitProblem;
import quarterlight.table.json.JsonObject;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.fact.Fact;
import quarterlight.visit.fact.Facts;

/** {@code new}: a new visit to one car. */
public final class NewVerb implements Verb {
    private final CliContext around;

    public NewVerb(CliContext around) {
        this.around = around;
    }

    @Override
    public CommandSpec spec() {
        CommandSpec spec = CliOptions.verb("new", "create a visit; add more facts with set")
                .addPositional(CliOptions.path(0, "VISIT", "folder that does not exist yet"));
        for (Fact<?> fact : Facts.all()) {
            fact.option()
                    .ifPresent(option ->
                            spec.addOption(CliOptions.text(name(fact), option.label(), option.help()).toBuilder()
                                    .required(option.required())
                                    .completionCandidates(fact.form().words())
                                    .build()));
        }
        return spec.addOption(CliOptions.json());
    }

    @Override
    public int run(ParseResult call) throws EditRefused, VisitProblem {
        Map<String, String> values = new LinkedHashMap<>();
        for (Fact<?> fact : Facts.all()) {
            if (fact.option().isPresent() && call.hasMatchedOption(name(fact))) {
                values.put(fact.key(), call.matchedOptionValue(name(fact), ""));
            }
        }
        Path path = CliOptions.pathAt(call, 0);
        VisitFacts facts = make(path, values);
        if (CliOptions.isJson(call)) {
            around.console()
                    .print(new JsonObject()
                            .put("visit", path)
                            .put("car", facts.car().name())
                            .put("style", facts.car().body().style().word())
                            .put(
                                    "construction",
                                    facts.car().body().construction().word())
                            .put("timezone", facts.timezone())
                            .text());
        } else {
            around.console()
                    .print("Made " + path + ": " + facts.car().name() + ", "
                            + facts.car().body().style().word() + ", "
                            + facts.car().body().construction().word() + ", times in " + facts.timezone() + ".\n");
        }
        return Exit.DONE;
    }

    private static String name(Fact<?> fact) {
        return "--" + fact.key();
    }

    VisitFacts make(Path path, Map<String, String> values) throws EditRefused, VisitProblem {
        VisitFacts facts =
                new FactEdits(around.zones().get()).start(values, around.clock().getZone());
        around.visits().create(path, facts).close();
        return facts;
    }
}
