package quarterlight.table;

import java.util.List;
import java.util.Map;
import quarterlight.table.cell.CellRefused;
import quarterlight.table.cell.Cells;
import quarterlight.table.cell.RowContext;

/** One kind of table: its columns, how a row becomes a value, and how a value becomes a row again. */
public interface RowKind<T> {
    /** The word for the kind in commands and file names: {@code readings}. */
    String word();

    /** The columns in the order in which they are written. */
    List<Column> columns();

    /** @throws CellRefused if a cell is not what it should be */
    T value(Cells cells) throws CellRefused;

    /** The filled cells of a value by column; a column left out is blank. */
    Map<String, String> cells(T value, RowContext context);
}
