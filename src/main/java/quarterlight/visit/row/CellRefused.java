package quarterlight.visit.row;

import java.util.Optional;
import quarterlight.language.Retold;

/** A row cannot be taken as it stands: which column, and why, in a sentence that says what to do. */
public final class CellRefused extends Exception {
    private final Optional<String> column;

    public CellRefused(String column, String reason) {
        super(Retold.of(reason));
        this.column = Optional.of(column);
    }

    /** The column at fault; empty if it is the row as a whole. */
    public Optional<String> column() {
        return column;
    }

    public String reason() {
        return getMessage();
    }
}
