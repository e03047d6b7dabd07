package quarterlight.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.CancellationException;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import quarterlight.about.ProgramVersion;
import quarterlight.cli.call.CallRefused;
import quarterlight.cli.call.CliContext;
import quarterlight.cli.call.CliOptions;
import quarterlight.cli.call.Exit;
import quarterlight.cli.call.Verb;
import quarterlight.edit.EditRefused;
import quarterlight.store.problem.VisitExists;
import quarterlight.store.problem.VisitProblem;
import quarterlight.store.problem.VisitUnreadable;
import quarterlight.store.problem.VisitUnwritable;
import quarterlight.table.json.JsonObject;

/** The command line: finds the verb, runs it, and turns whatever goes wrong into one line and an exit status. */
public final class Program {
    private static final System.Logger LOG = System.getLogger(Program.class.getName());

    private final CliContext around;

    public Program(CliContext around) {
        this.around = Objects.requireNonNull(around, "around");
    }

    /** Runs a call. Never throws for what a user can do wrong. */
    public int run(String... args) {
        String[] call = CliOptions.spelledOut(Verbs.NAMES, args);
        CliContext here =
                CliOptions.isQuiet(call) ? around.with(around.console().quiet()) : around;
        try {
            Map<String, Verb> verbs = Verbs.of(here, call);
            CommandLine line = Verbs.line(verbs);
            return dispatch(verbs, line, line.parseArgs(call));
        } catch (ParameterException e) {
            return stop(call, Exit.UNUSABLE, UsageMessages.sentence(e));
        } catch (CallRefused | EditRefused | VisitExists e) {
            return stop(call, Exit.UNUSABLE, e.getMessage());
        } catch (VisitUnreadable | VisitUnwritable e) {
            LOG.log(System.Logger.Level.WARNING, "a visit could not be read or written", e);
            return stop(call, Exit.CLOSED, e.getMessage());
        } catch (VisitProblem e) {
            return stop(call, Exit.CLOSED, e.getMessage());
        } catch (CancellationException e) {
            return stop(
                    call,
                    Exit.NOT_ALL,
                    "interrupted; what was finished is kept, and the same command continues from there");
        } catch (IOException e) {
            LOG.log(System.Logger.Level.WARNING, "a file could not be read or written", e);
            return stop(call, Exit.UNUSABLE, sentence(e));
        } catch (InvalidPathException e) {
            LOG.log(System.Logger.Level.WARNING, "a file cannot be named", e);
            return stop(
                    call,
                    Exit.UNUSABLE,
                    e.getInput() + " has letters that this computer's setting for file names ("
                            + System.getProperty("sun.jnu.encoding")
                            + ") does not support; use a UTF-8 locale, such as LC_ALL=C.UTF-8, and try again");
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            LOG.log(System.Logger.Level.ERROR, "a fault of the program", e);
            return stop(
                    call,
                    Exit.UNUSABLE,
                    "an error in the program stopped this command ("
                            + e.getClass().getSimpleName() + "); details are in " + around.log()
                            + "; please report it");
        } finally {
            forgetInput();
        }
    }

    private void forgetInput() {
        try {
            around.console().in().close();
        } catch (IOException e) {
            LOG.log(System.Logger.Level.WARNING, "what came by standard input could not be removed", e);
        }
    }

    /** Says why a call stopped: on standard error, and where the call asked for a JSON document, as that document too. */
    private int stop(String[] call, int status, String sentence) {
        around.console().complain(sentence);
        if (CliOptions.asksForJson(call)) {
            JsonObject error = new JsonObject()
                    .put("exit", status)
                    .put("sentence", around.console().in().told(sentence));
            around.console().print(new JsonObject().put("error", error).text());
        }
        return status;
    }

    private int dispatch(Map<String, Verb> verbs, CommandLine line, ParseResult root)
            throws CallRefused, EditRefused, VisitProblem, IOException {
        if (!root.hasSubcommand()) {
            if (root.isUsageHelpRequested()) {
                around.console().print(line.getUsageMessage(Ansi.OFF));
                return Exit.DONE;
            }
            if (root.isVersionHelpRequested()) {
                around.console().print(version());
                return Exit.DONE;
            }
            return verbs.get(Verbs.WITHOUT_A_WORD).run(root);
        }
        ParseResult call = root.subcommand();
        String name = call.commandSpec().name();
        if (call.isUsageHelpRequested()) {
            around.console().print(line.getSubcommands().get(name).getUsageMessage(Ansi.OFF));
            return Exit.DONE;
        }
        return verbs.get(name).run(call);
    }

    private static String version() {
        return ProgramVersion.ours().text() + "\n"
                + "Apache License 2.0; the licenses of its libraries are shipped with it\n"
                + "Java " + Runtime.version() + ", " + System.getProperty("os.name") + " "
                + System.getProperty("os.arch") + "\n";
    }

    private static String sentence(IOException e) {
        String file = e instanceof FileSystemException named && named.getFile() != null ? named.getFile() : "";
        if (e instanceof NoSuchFileException) {
            return file + " is not there; check the name";
        }
        if (e instanceof AccessDeniedException) {
            return file + " may not be read or written; check its permissions";
        }
        return (file.isEmpty() ? "a file" : file) + " cannot be read or written (" + e.getMessage()
                + "); check the disk";
    }
}
