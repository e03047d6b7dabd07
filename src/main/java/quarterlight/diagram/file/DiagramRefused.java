package quarterlight.diagram.file;

import java.util.Objects;
import java.util.OptionalInt;
import quarterlight.language.Retold;
import quarterlight.language.Sentences;

/** A body diagram that cannot be used; the message is one sentence for the user: which file, where, what, and what to do. */
public final class DiagramRefused extends Exception {
    private static final long serialVersionUID = 1L;

    private final String file;
    private final int line;
    private final String found;

    /**
     * @param file name of the file
     * @param line line of the file, from 1; 0 if the reason has no place
     * @param found what was found, without a full stop
     * @param advice what to do, a sentence without a full stop
     */
    public DiagramRefused(String file, int line, String found, String advice) {
        super(
                line > 0
                        ? Sentences.say("told.of.place", file, line, Retold.of(found), Retold.of(advice))
                        : file + ": " + Retold.of(found) + "; " + Retold.of(advice) + ".");
        this.file = Objects.requireNonNull(file, "file");
        this.line = line;
        this.found = Objects.requireNonNull(found, "found");
    }

    public String file() {
        return file;
    }

    public OptionalInt line() {
        return line > 0 ? OptionalInt.of(line) : OptionalInt.empty();
    }

    public String found() {
        return found;
    }
}
