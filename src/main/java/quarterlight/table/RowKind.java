package quarterlight.table;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import quarterlight.table.cell.Cells;
import quarterlight.table.cell.CellsOut;
import quarterlight.table.cell.RowContext;
import quarterlight.visit.row.CellRefused;
import quarterlight.visit.row.Column;
import quarterlight.visit.row.RecordKind;

/**
 * One kind of table: a kind of rows, and what its rows must keep to beyond the form of their cells.
 *
 * @param kind its columns, and how a row is made of them
 */
public record RowKind<T>(RecordKind<T> kind, RowRule<T> rule) {
    public RowKind {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(rule, "rule");
    }

    /** A kind whose rows need no further rule. */
    public static <T> RowKind<T> of(RecordKind<T> kind) {
        return new RowKind<>(kind, RowRule.none());
    }

    /** The word for the kind in commands and file names: {@code readings}. */
    public String word() {
        return kind.word();
    }

    /** The columns in the order in which they are written. */
    public List<Column> columns() {
        return kind.columns();
    }

    /** @throws CellRefused if a cell is not what it should be */
    public T value(Cells cells) throws CellRefused {
        return rule.checked(kind.enter(cells), cells.context());
    }

    /** The filled cells of a value by column; a column left out is blank. */
    public Map<String, String> cells(T value, RowContext context) {
        CellsOut out = new CellsOut(context);
        kind.write(value, out);
        return out.cells();
    }
}
