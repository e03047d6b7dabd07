package quarterlight.photo;

import java.nio.file.Path;

/** A picture cannot be decoded; the file itself is kept all the same. */
public final class PictureUnreadable extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient Path file;
    private final String reason;

    public PictureUnreadable(Path file, String reason) {
        super(file + ": " + reason);
        this.file = file;
        this.reason = reason;
    }

    public PictureUnreadable(Path file, String reason, Throwable cause) {
        super(file + ": " + reason, cause);
        this.file = file;
        this.reason = reason;
    }

    public Path file() {
        return file;
    }

    /** In words that can follow the file's name and a colon. */
    public String reason() {
        return reason;
    }
}
