package quarterlight.store.rows;

import java.sql.SQLException;
import java.util.List;
import java.util.function.Function;
import quarterlight.visit.row.CellRefused;
import quarterlight.visit.row.RecordKind;

/**
 * How one kind of value stands in its table: the columns beside {@code id}, and the value written to and read from them.
 * The names come from the schema and never from outside, so the statements are made of them; values are always bound.
 *
 * @param columns in the order in which {@code write} gives the cells
 */
public record TableShape<T>(String table, List<String> columns, Function<T, RowValues> write, Reader<T> read) {
    /** Makes a value of a row. */
    @FunctionalInterface
    public interface Reader<T> {
        T read(Row row) throws SQLException;
    }

    public TableShape {
        columns = List.copyOf(columns);
    }

    static <T> TableShape<T> of(String table, String columns, Function<T, RowValues> write, Reader<T> read) {
        return new TableShape<>(table, List.of(columns.split(", ")), write, read);
    }

    /** The shape of a kind of rows, by its fields. */
    public static <T> TableShape<T> of(RecordKind<T> kind) {
        List<String> columns = kind.storedColumns();
        return new TableShape<>(
                kind.table(),
                columns,
                value -> {
                    StoredCells cells = new StoredCells();
                    kind.write(value, cells);
                    return cells.inOrder(columns);
                },
                row -> read(kind, row));
    }

    private static <T> T read(RecordKind<T> kind, Row row) throws SQLException {
        try {
            return kind.read(new StoredRow(row));
        } catch (CellRefused e) {
            throw new SQLException(e.reason(), e);
        }
    }

    String insert() {
        return "INSERT INTO " + table + " (" + String.join(", ", columns) + ") VALUES (?"
                + ", ?".repeat(columns.size() - 1) + ")";
    }

    String update() {
        return "UPDATE " + table + " SET " + String.join(" = ?, ", columns) + " = ? WHERE id = ?";
    }

    String delete() {
        return "DELETE FROM " + table + " WHERE id = ?";
    }

    String select() {
        return "SELECT id, " + String.join(", ", columns) + " FROM " + table + " ORDER BY id";
    }
}
