package quarterlight.cli;

import java.io.IOException;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.cli.call.CallRefused;
import quarterlight.cli.call.CliContext;
import quarterlight.cli.call.CliOptions;
import quarterlight.cli.call.Exit;
import quarterlight.cli.call.Verb;
import quarterlight.cli.text.CliText;
import quarterlight.diagram.file.DiagramCheck;
import quarterlight.diagram.file.DiagramFile;
import quarterlight.diagram.file.DiagramFinding;
import quarterlight.diagram.file.DiagramRefused;
import quarterlight.table.json.JsonObject;

/** {@code diagram check}: what a body diagram of one's own lacks. */
final class DiagramVerb implements Verb {
    private final CliContext around;

    DiagramVerb(CliContext around) {
        this.around = around;
    }

    @Override
    public CommandSpec spec() {
        return CliOptions.verb("diagram", "check your own body diagram and say what it lacks")
                .addPositional(PositionalParamSpec.builder()
                        .index("0")
                        .paramLabel("check")
                        .type(String.class)
                        .arity("1")
                        .required(true)
                        .description("the word check")
                        .build())
                .addPositional(CliOptions.path(1, "FILE.svg", "the diagram; - for standard input"))
                .addOption(CliOptions.json());
    }

    @Override
    public int run(ParseResult call) throws CallRefused, IOException {
        String word = call.matchedPositionalValue(0, "");
        if (!word.equals("check")) {
            throw new CallRefused(
                    "diagram: \"" + word + "\" is not something to do with a diagram; write diagram check FILE.svg");
        }
        List<DiagramFinding> findings;
        try {
            findings = DiagramCheck.check(
                    DiagramFile.read(around.console().in().file(CliOptions.pathAt(call, 1))),
                    around.zones().get());
        } catch (DiagramRefused e) {
            throw new CallRefused(e.getMessage());
        }
        around.console().print(CliOptions.isJson(call) ? json(findings).text() : report(findings));
        return findings.isEmpty() ? Exit.DONE : Exit.NOT_ALL;
    }

    private static JsonObject json(List<DiagramFinding> findings) {
        return new JsonObject()
                .put("ok", findings.isEmpty())
                .put(
                        "findings",
                        findings.stream()
                                .map(finding -> new JsonObject()
                                        .put("kind", finding.kind().word())
                                        .put("view", finding.view().map(view -> view.word()))
                                        .put("zone", finding.zone())
                                        .put("text", finding.text()))
                                .toList());
    }

    private static String report(List<DiagramFinding> findings) {
        if (findings.isEmpty()) {
            return "The diagram has every view and every zone, and can be used.\n";
        }
        StringBuilder out = new StringBuilder();
        findings.forEach(finding -> out.append(finding.text()).append('\n'));
        return out.append(CliText.count(findings.size(), "finding", "findings"))
                .append(".\n")
                .toString();
    }
}
