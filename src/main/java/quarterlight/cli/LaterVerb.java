package quarterlight.cli;

import java.util.Objects;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** A verb that has its name and not yet its work. */
final class LaterVerb implements Verb {
    private final String name;
    private final String does;

    LaterVerb(String name, String does) {
        this.name = Objects.requireNonNull(name, "name");
        this.does = Objects.requireNonNull(does, "does");
    }

    @Override
    public CommandSpec spec() {
        CommandSpec spec = Words.verb(name, does + " (not built yet)");
        spec.parser().unmatchedArgumentsAllowed(true).unmatchedOptionsArePositionalParams(true);
        return spec;
    }

    @Override
    public int run(ParseResult call) throws CallRefused {
        throw new CallRefused("the verb " + name + " is not built yet; nothing was done");
    }
}
