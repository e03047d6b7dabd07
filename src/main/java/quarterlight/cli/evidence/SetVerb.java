package quarterlight.cli.evidence;

import java.util.List;
import java.util.Map;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.car.ZoneCatalog;
import quarterlight.cli.call.CliContext;
import quarterlight.cli.call.CliOptions;
import quarterlight.cli.call.Exit;
import quarterlight.cli.call.Verb;
import quarterlight.edit.EditRefused;
import quarterlight.edit.fact.DiagramEdits;
import quarterlight.edit.fact.FactEdits;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.table.json.JsonObject;

/** {@code set}: facts of the visit and its car. */
public final class SetVerb implements Verb {
    private final CliContext around;

    public SetVerb(CliContext around) {
        this.around = around;
    }

    @Override
    public CommandSpec spec() {
        return CliOptions.verb(
                        "set",
                        "set facts of the visit and the car; an empty value clears a fact",
                        "The keys are " + String.join(", ", new FactEdits(new ZoneCatalog(List.of())).keys()) + ".")
                .addPositional(CliOptions.visit())
                .addPositional(PositionalParamSpec.builder()
                        .index("1..*")
                        .paramLabel("KEY=VALUE")
                        .type(List.class)
                        .auxiliaryTypes(String.class)
                        .arity("1..*")
                        .required(true)
                        .description("the facts")
                        .build())
                .addOption(CliOptions.json());
    }

    @Override
    public int run(ParseResult call) throws EditRefused, VisitProblem {
        List<String> words = call.matchedPositional(1).getValue();
        Map<String, String> values = FactEdits.assignments(words);
        List<String> remarks;
        try (VisitStore store = around.visits().forEditing(CliOptions.pathAt(call, 0))) {
            ZoneCatalog catalog = around.zones().get();
            remarks = new DiagramEdits(around.diagrams(), catalog).set(store, new FactEdits(catalog), values);
        }
        if (CliOptions.isJson(call)) {
            around.console()
                    .print(new JsonObject()
                            .put("set", List.copyOf(values.keySet()))
                            .put("remarks", remarks)
                            .text());
        } else {
            StringBuilder out = new StringBuilder("Set " + String.join(", ", values.keySet()) + ".\n");
            remarks.forEach(remark -> out.append(remark).append('\n'));
            around.console().print(out.toString());
        }
        return Exit.DONE;
    }
}
