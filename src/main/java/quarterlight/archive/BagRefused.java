package quarterlight.archive;

import java.nio.file.Path;
import java.util.Objects;

/** A file is no bag that can be opened. The message is a full sentence: which file, what was found, what to do. */
public final class BagRefused extends Exception {
    private final transient Path file;

    public BagRefused(Path file, String reason) {
        super(file + " " + reason);
        this.file = Objects.requireNonNull(file, "file");
    }

    public Path file() {
        return file;
    }
}
