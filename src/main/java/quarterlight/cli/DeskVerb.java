package quarterlight.cli;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.cli.call.CallRefused;
import quarterlight.cli.call.CliContext;
import quarterlight.cli.call.CliOptions;
import quarterlight.cli.call.Exit;
import quarterlight.cli.call.Verb;

/** {@code desk}: opens the desktop, with a visit if one is named. */
final class DeskVerb implements Verb {
    private final CliContext around;

    DeskVerb(CliContext around) {
        this.around = around;
    }

    @Override
    public CommandSpec spec() {
        return CliOptions.verb("desk", "open the desktop")
                .addPositional(CliOptions.optionalVisit(0, "folder of the visit to open"));
    }

    @Override
    public int run(ParseResult call) throws CallRefused {
        Optional<Path> visit = Optional.ofNullable(call.matchedPositionalValue(0, (Path) null));
        if (!around.desk().open(visit)) {
            throw new CallRefused("the desktop needs a display and there is none; every other verb works without one");
        }
        return Exit.DONE;
    }
}
