package quarterlight.cli.shell;

import java.util.Objects;
import java.util.function.Supplier;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.cli.call.CliContext;
import quarterlight.cli.call.CliOptions;
import quarterlight.cli.call.Exit;
import quarterlight.cli.call.Verb;

/** {@code completion}: the script by which bash and zsh complete verbs, options, closed lists and files. */
public final class CompletionVerb implements Verb {
    private final CliContext around;
    private final Supplier<CommandLine> line;

    /** @param line all verbs */
    public CompletionVerb(CliContext around, Supplier<CommandLine> line) {
        this.around = Objects.requireNonNull(around, "around");
        this.line = Objects.requireNonNull(line, "line");
    }

    @Override
    public CommandSpec spec() {
        return CliOptions.verb(
                "completion",
                "print a script that lets bash and zsh complete verbs, options and files: source <(quarterlight"
                        + " completion)");
    }

    @Override
    public int run(ParseResult call) {
        around.console().print(AutoComplete.bash("quarterlight", line.get()));
        return Exit.DONE;
    }
}
