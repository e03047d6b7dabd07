package quarterlight.table;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What reading a table gave.
 *
 * @param file name of the file, for messages
 * @param usable false if the table as a whole cannot be read; then {@code rows} is empty and {@code refused} says why
 * @param rows the good rows, in the order of the file
 * @param refused the rows that cannot be taken, in the order of the file
 */
public record TableRead<T>(String file, boolean usable, List<Row<T>> rows, List<Refused> refused) {
    public TableRead {
        Objects.requireNonNull(file, "file");
        rows = List.copyOf(rows);
        refused = List.copyOf(refused);
    }

    /** A value and the line it begins on, 1 for the header's. */
    public record Row<T>(int line, T value) {}

    /** A row that cannot be taken, or the table as a whole: the line, the column if it is one cell's fault, and why. */
    public record Refused(int line, Optional<String> column, String reason) {
        public Refused {
            Objects.requireNonNull(column, "column");
            Objects.requireNonNull(reason, "reason");
        }

        /** One sentence: file, line, column, reason. */
        public String sentence(String file) {
            return file + ", line " + line
                    + column.map(name -> ", column " + name).orElse("") + ": " + reason;
        }
    }

    static <T> TableRead<T> unusable(String file, Refused why) {
        return new TableRead<>(file, false, List.of(), List.of(why));
    }

    public List<T> values() {
        return rows.stream().map(Row::value).toList();
    }
}
