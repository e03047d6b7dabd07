package quarterlight.visit;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * A table of the visit as it is kept, cell by cell: for archives and other programs, not for computing.
 *
 * @param table its name: the word of its kind of rows, else what it holds
 * @param columns with their units
 * @param rows one cell per column; text, whole number, number or truth value, empty where nothing is known
 */
public record StoredRows(String table, List<String> columns, List<List<Optional<Object>>> rows) {
    public StoredRows {
        Objects.requireNonNull(table, "table");
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
        int width = columns.size();
        if (rows.stream().anyMatch(row -> row.size() != width)) {
            throw new IllegalArgumentException("a row of " + table + " has not one cell per column");
        }
    }

    /** The same rows with some of their columns. */
    public StoredRows only(Predicate<String> wanted) {
        List<Integer> kept = IntStream.range(0, columns.size())
                .filter(i -> wanted.test(columns.get(i)))
                .boxed()
                .toList();
        return new StoredRows(
                table,
                kept.stream().map(columns::get).toList(),
                rows.stream().map(row -> kept.stream().map(row::get).toList()).toList());
    }

    /** The same rows without those of which a column says yes; all of them if there is no such column. */
    public StoredRows exceptWhere(String column) {
        int at = columns.indexOf(column);
        return at < 0
                ? this
                : new StoredRows(
                        table,
                        columns,
                        rows.stream()
                                .filter(row -> !row.get(at).equals(Optional.of(true)))
                                .toList());
    }

    public StoredRows without(Set<String> unwanted) {
        return only(column -> !unwanted.contains(column));
    }
}
