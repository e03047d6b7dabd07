package quarterlight.photo;

import java.nio.file.Path;
import quarterlight.language.Retold;

/** A picture cannot be decoded; the file itself is kept all the same. */
public final class PictureUnreadable extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient Path file;
    private final String reason;

    public PictureUnreadable(Path file, String reason) {
        this(file, reason, null);
    }

    public PictureUnreadable(Path file, String reason, Throwable cause) {
        super(file + ": " + Retold.of(reason), cause);
        this.file = file;
        this.reason = Retold.of(reason);
    }

    public Path file() {
        return file;
    }

    /** In words that can follow the file's name and a colon. */
    public String reason() {
        return reason;
    }
}
