package quarterlight.cli.shell;

import java.util.Objects;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.about.ProgramVersion;
import quarterlight.cli.call.CliContext;
import quarterlight.cli.call.CliOptions;
import quarterlight.cli.call.Exit;
import quarterlight.cli.call.Verb;

/** {@code man}: the manual page of all verbs, for the system's reader of such pages. */
public final class ManVerb implements Verb {
    private final CliContext around;
    private final Supplier<CommandLine> line;

    /** @param line all verbs */
    public ManVerb(CliContext around, Supplier<CommandLine> line) {
        this.around = Objects.requireNonNull(around, "around");
        this.line = Objects.requireNonNull(line, "line");
    }

    @Override
    public CommandSpec spec() {
        return CliOptions.verb(
                "man",
                "print the manual page of all verbs: quarterlight man > quarterlight.1, then man ./quarterlight.1");
    }

    @Override
    public int run(ParseResult call) {
        around.console()
                .print(ManualPage.of(
                        line.get(), "Quarterlight " + ProgramVersion.ours().number()));
        return Exit.DONE;
    }
}
