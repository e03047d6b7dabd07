package quarterlight.cli.call;

import java.io.IOException;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.edit.EditRefused;
import quarterlight.store.problem.VisitProblem;

/** One verb of the command line. */
public interface Verb {
    /** Its name, options and parameters. */
    CommandSpec spec();

    /**
     * Does it.
     *
     * @return an exit status of {@link Exit}
     * @throws CallRefused if the call is unusable; nothing was changed
     * @throws EditRefused if the edit cannot be done as asked; nothing was changed
     * @throws VisitProblem if the visit cannot be opened, read or saved
     * @throws IOException if a file named in the call cannot be read or written
     */
    int run(ParseResult call) throws CallRefused, EditRefused, VisitProblem, IOException;
}
