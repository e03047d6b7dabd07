package quarterlight.table;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;

/** A table's file cannot be read at all: it is not there, is a folder, may not be read, or is too large. */
public final class TableUnreadable extends Exception {
    private final transient Path path;
    private final transient List<String> sheets;

    public TableUnreadable(Path path, String reason) {
        this(path, reason, List.of());
    }

    /** @param sheets of a workbook, of which one is to be chosen */
    public TableUnreadable(Path path, String reason, List<String> sheets) {
        super(path + " " + Objects.requireNonNull(reason, "reason"));
        this.path = path;
        this.sheets = List.copyOf(sheets);
    }

    /** The sheets of which one is to be chosen; empty if the fault is another. */
    public List<String> sheets() {
        return sheets;
    }

    public Path path() {
        return path;
    }
}
