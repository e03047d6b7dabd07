package quarterlight.photo.originals;

import static quarterlight.language.Sentences.say;

import java.nio.file.Path;
import quarterlight.language.Retold;

/** An original is not there, or what stands in its place may not be read. */
public final class OriginalRefused extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient Path file;
    private final String reason;
    private final boolean missing;

    private OriginalRefused(Path file, String reason, boolean missing, Exception cause) {
        super(file + ": " + Retold.of(reason), cause);
        this.file = file;
        this.reason = Retold.of(reason);
        this.missing = missing;
    }

    static OriginalRefused missing(Path file) {
        return new OriginalRefused(file, say("problem.media.not-there"), true, null);
    }

    static OriginalRefused because(Path file, String reason) {
        return because(file, reason, null);
    }

    static OriginalRefused because(Path file, String reason, Exception cause) {
        return new OriginalRefused(file, reason, false, cause);
    }

    public Path file() {
        return file;
    }

    /** In words that can follow the file's name and a colon. */
    public String reason() {
        return reason;
    }

    /** Whether it is simply not there. */
    public boolean isMissing() {
        return missing;
    }
}
