package quarterlight.cli.call;

import java.io.Console;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.archive.signature.SigningKey;
import quarterlight.archive.signature.SigningKeyFile;
import quarterlight.archive.signature.SigningKeyProblem;

/** A passphrase as a call gives it: the first line of a file, or typed unseen where there is a terminal; never a word of the call, which others can see. */
public final class Passphrase {
    private static final String FILE = "--passphrase-file";

    private Passphrase() {}

    public static OptionSpec option() {
        return CliOptions.text(
                FILE, "FILE", "holds the passphrase of the signing key in its first line (default: asked for)");
    }

    /** The key of this computer, made if there is none; whoever calls is asked for the passphrase if one is needed. */
    public static SigningKey key(ParseResult call, CliContext around) throws CallRefused, IOException {
        SigningKeyFile file = new SigningKeyFile(around.settings());
        try {
            return file.key(file.isLocked() ? given(call, FILE, "Passphrase of the signing key: ") : Optional.empty());
        } catch (SigningKeyProblem e) {
            throw new CallRefused(e.getMessage());
        }
    }

    /** What keeps the key now; empty if nothing does. */
    public static Optional<char[]> present(ParseResult call, CliContext around) throws CallRefused, IOException {
        return new SigningKeyFile(around.settings()).isLocked()
                ? given(call, FILE, "Present passphrase of the signing key: ")
                : Optional.empty();
    }

    /** From the file that an option names, else from the terminal; empty if there is neither. */
    public static Optional<char[]> given(ParseResult call, String option, String asking) throws CallRefused {
        String name = call.matchedOptionValue(option, "");
        if (!name.isEmpty()) {
            return Optional.of(firstLine(name));
        }
        Console terminal = System.console();
        return Optional.ofNullable(terminal).map(there -> there.readPassword(asking));
    }

    private static char[] firstLine(String name) throws CallRefused {
        try {
            List<String> lines = Files.readAllLines(Path.of(name));
            if (lines.isEmpty() || lines.get(0).isEmpty()) {
                throw new CallRefused(name + " holds no passphrase in its first line; write one there");
            }
            return lines.get(0).toCharArray();
        } catch (IOException | IllegalArgumentException e) {
            throw new CallRefused(name + " cannot be read as a passphrase in UTF-8; name a file of one line");
        }
    }

    /** A new one, typed twice at a terminal. */
    public static char[] fresh(ParseResult call, String option) throws CallRefused {
        Optional<char[]> first = given(call, option, "New passphrase: ");
        if (first.isEmpty() || first.get().length == 0) {
            throw new CallRefused(
                    "no new passphrase was given; name a file with " + option + ", or call from a terminal");
        }
        if (!call.hasMatchedOption(option)) {
            Optional<char[]> again = given(call, option, "The same again: ");
            if (again.isEmpty() || !Arrays.equals(first.get(), again.get())) {
                throw new CallRefused("the two passphrases differ; nothing was changed, try again");
            }
        }
        return first.get();
    }
}
