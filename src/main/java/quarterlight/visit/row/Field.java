package quarterlight.visit.row;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * One field of a kind of rows, the same for tables, the database and everything made of them. Adding a column is adding one of these to
 * its {@link RecordKind}.
 *
 * @param column its name in a table, and whether the header must have it
 * @param stored its name in the database
 * @param of the value of a row; empty if the row has none
 */
public record Field<T, V>(Column column, String stored, Shape<V> shape, Function<T, Optional<V>> of) {
    public Field {
        Objects.requireNonNull(column, "column");
        Objects.requireNonNull(stored, "stored");
        Objects.requireNonNull(shape, "shape");
        Objects.requireNonNull(of, "of");
    }

    /** A field that every row has. */
    public static <T, V> Field<T, V> required(String name, Shape<V> shape, Function<T, V> of) {
        return new Field<>(Column.required(name), name, shape, of.andThen(Optional::of));
    }

    /** A field that a row may have. */
    public static <T, V> Field<T, V> optional(String name, Shape<V> shape, Function<T, Optional<V>> of) {
        return new Field<>(Column.optional(name), name, shape, of);
    }

    /** The same field under another name in the database. */
    public Field<T, V> storedAs(String other) {
        return new Field<>(column, other, shape, of);
    }

    /** The columns of a table that it takes up. */
    public List<Column> columns() {
        return shape.columns().apply(column);
    }

    /** The columns of the database that it takes up. */
    public List<String> storedColumns() {
        return shape.stored().apply(stored);
    }

    /** Writes the field of a row. */
    public void write(T row, CellSink out) {
        of.apply(row).ifPresent(value -> shape.write().to(out, out.name(this), value));
    }
}
