package quarterlight.photo.originals;

import java.io.IOException;
import java.nio.file.Path;
import quarterlight.language.Retold;
import quarterlight.photo.Refusal;

/** A file could not be copied into the originals and proved to be the same. */
public final class OriginalNotKept extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient Path file;
    private final String reason;

    OriginalNotKept(Path file, String reason) {
        super(file + ": " + Retold.of(reason));
        this.file = file;
        this.reason = Retold.of(reason);
    }

    static OriginalNotKept unreadable(Path file, IOException cause) {
        return new OriginalNotKept(file, "the file cannot be read (" + Refusal.because(cause) + ")");
    }

    public Path file() {
        return file;
    }

    /** In words that can follow the file's name and a colon. */
    public String reason() {
        return reason;
    }
}
