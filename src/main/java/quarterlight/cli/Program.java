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
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import quarterlight.edit.EditRefused;
import quarterlight.store.VisitExists;
import quarterlight.store.VisitProblem;
import quarterlight.store.VisitUnreadable;
import quarterlight.store.VisitUnwritable;

/** The command line: finds the verb, runs it, and turns whatever goes wrong into one line and an exit status. */
public final class Program {
    private static final System.Logger LOG = System.getLogger(Program.class.getName());

    private final Surroundings around;

    public Program(Surroundings around) {
        this.around = Objects.requireNonNull(around, "around");
    }

    private static CommandLine line(Map<String, Verb> verbs) {
        CommandSpec root = Words.verb("quarterlight", "The evidence bench of an independent car inspector.");
        root.usageMessage().footer("", "For more, use VERB --help.");
        CommandLine line = new CommandLine(root);
        verbs.forEach((name, verb) -> line.addSubcommand(name, verb.spec()));
        line.setUsageHelpWidth(110);
        line.setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF));
        return line;
    }

    /** Runs a call. Never throws for what a user can do wrong. */
    public int run(String... args) {
        try {
            Map<String, Verb> verbs = Verbs.of(around, args);
            CommandLine line = line(verbs);
            return dispatch(verbs, line, line.parseArgs(args));
        } catch (ParameterException e) {
            around.console().complain(Misuse.sentence(e));
            return Exit.UNUSABLE;
        } catch (CallRefused | EditRefused | VisitExists e) {
            around.console().complain(e.getMessage());
            return Exit.UNUSABLE;
        } catch (VisitUnreadable | VisitUnwritable e) {
            around.console().complain(e.getMessage());
            LOG.log(System.Logger.Level.WARNING, "a visit could not be read or written", e);
            return Exit.CLOSED;
        } catch (VisitProblem e) {
            around.console().complain(e.getMessage());
            return Exit.CLOSED;
        } catch (CancellationException e) {
            around.console()
                    .complain("interrupted; what was finished is kept, and the same command continues from there");
            return Exit.NOT_ALL;
        } catch (IOException e) {
            around.console().complain(sentence(e));
            LOG.log(System.Logger.Level.WARNING, "a file could not be read or written", e);
            return Exit.UNUSABLE;
        } catch (InvalidPathException e) {
            around.console()
                    .complain(e.getInput() + " has letters that this computer's setting for file names ("
                            + System.getProperty("sun.jnu.encoding")
                            + ") does not support; use a UTF-8 locale, such as LC_ALL=C.UTF-8, and try again");
            LOG.log(System.Logger.Level.WARNING, "a file cannot be named", e);
            return Exit.UNUSABLE;
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            LOG.log(System.Logger.Level.ERROR, "a fault of the program", e);
            around.console()
                    .complain("an error in the program stopped this command ("
                            + e.getClass().getSimpleName() + "); details are in " + around.log()
                            + "; please report it");
            return Exit.UNUSABLE;
        }
    }

    private int dispatch(Map<String, Verb> verbs, CommandLine line, ParseResult root)
            throws CallRefused, EditRefused, VisitProblem, IOException {
        if (!root.hasSubcommand()) {
            if (root.isUsageHelpRequested()) {
                around.console().print(line.getUsageMessage(Ansi.OFF));
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
