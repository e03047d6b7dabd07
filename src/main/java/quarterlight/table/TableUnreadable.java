package quarterlight.table;

import java.nio.file.Path;
import java.util.Objects;

/** A table's file cannot be read at all: it is not there, is a folder, may not be read, or is too large. */
public final class TableUnreadable extends Exception {
    private final transient Path path;

    public TableUnreadable(Path path, String reason) {
        super(path + " " + Objects.requireNonNull(reason, "reason"));
        this.path = path;
    }

    public Path path() {
        return path;
    }
}
