package quarterlight.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * The inverse of every row change since the visit was opened, written by temporary triggers that are generated from the
 * tables. Playing a range of it backwards undoes the range, and the same triggers write the inverse of that.
 * <p>Source: SQLite technical note "Automatic Undo/Redo Using SQLite"; adapted: ranges are kept by {@link Editing}.
 */
final class UndoJournal {
    /** Tables that no step brings back, and why. */
    static final Map<String, String> UNTRACKED =
            Map.of("edit_log", "it tells what happened, and an undo is one of the things that happen");

    private final Connection connection;

    private UndoJournal(Connection connection) {
        this.connection = connection;
    }

    /** Sets up the journal of a connection; it lasts as long as the connection. */
    static UndoJournal install(Connection connection) throws SQLException {
        Database.run(
                connection,
                """
                CREATE TEMP TABLE undo_journal (
                    seq     INTEGER PRIMARY KEY,
                    changed TEXT NOT NULL,
                    way     TEXT NOT NULL,
                    inverse TEXT NOT NULL
                ) STRICT
                """);
        for (String table : tables(connection)) {
            if (!UNTRACKED.containsKey(table)) {
                track(connection, table);
            }
        }
        return new UndoJournal(connection);
    }

    static List<String> tables(Connection connection) throws SQLException {
        return column(
                connection,
                "SELECT name FROM main.sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite\\_%' ESCAPE '\\'"
                        + " ORDER BY name");
    }

    private static void track(Connection connection, String table) throws SQLException {
        List<String> columns = column(connection, "SELECT name FROM pragma_table_info('" + table + "') ORDER BY cid");
        String differs =
                columns.stream().map(c -> "OLD." + c + " IS NOT NEW." + c).collect(Collectors.joining(" OR "));
        String restored = columns.stream()
                .map(c -> "'" + c + " = ' || quote(OLD." + c + ")")
                .collect(Collectors.joining(" || ', ' || "));
        String values = columns.stream().map(c -> "quote(OLD." + c + ")").collect(Collectors.joining(" || ', ' || "));
        trigger(connection, table, "AFTER INSERT", "", "added", "'DELETE FROM " + table + " WHERE id = ' || NEW.id");
        trigger(
                connection,
                table,
                "AFTER UPDATE",
                "WHEN " + differs,
                "changed",
                "'UPDATE " + table + " SET ' || " + restored + " || ' WHERE id = ' || NEW.id");
        trigger(
                connection,
                table,
                "BEFORE DELETE",
                "",
                "removed",
                "'INSERT INTO " + table + " (" + String.join(", ", columns) + ") VALUES (' || " + values + " || ')'");
    }

    private static void trigger(
            Connection connection, String table, String event, String condition, String way, String inverse)
            throws SQLException {
        Database.run(
                connection,
                "CREATE TEMP TRIGGER undo_" + way + "_" + table + " " + event + " ON main." + table + " " + condition
                        + " BEGIN INSERT INTO undo_journal (changed, way, inverse) VALUES ('" + table + "', '" + way
                        + "', " + inverse + "); END");
    }

    private static List<String> column(Connection connection, String sql) throws SQLException {
        List<String> found = new ArrayList<>();
        try (Statement statement = connection.createStatement();
                ResultSet result = statement.executeQuery(sql)) {
            while (result.next()) {
                found.add(result.getString(1));
            }
        }
        return found;
    }

    /** The number of the entry written last; 0 if there is none. */
    long last() throws SQLException {
        return Database.askNumber(connection, "SELECT coalesce(max(seq), 0) FROM temp.undo_journal");
    }

    /** The tables changed by the entries above {@code after}. */
    List<String> tables(long after) throws SQLException {
        List<String> found = new ArrayList<>();
        try (PreparedStatement select =
                connection.prepareStatement("SELECT DISTINCT changed FROM temp.undo_journal WHERE seq > ?")) {
            select.setLong(1, after);
            try (ResultSet result = select.executeQuery()) {
                while (result.next()) {
                    found.add(result.getString(1));
                }
            }
        }
        return found;
    }

    /** The rows changed by the entries above {@code after} in words: {@code pin added 3, photo changed 1}. */
    String summary(long after) throws SQLException {
        List<String> parts = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement("SELECT changed, way, count(*) FROM"
                + " temp.undo_journal WHERE seq > ? GROUP BY changed, way ORDER BY changed, way")) {
            select.setLong(1, after);
            try (ResultSet result = select.executeQuery()) {
                while (result.next()) {
                    parts.add(result.getString(1) + " " + result.getString(2) + " " + result.getLong(3));
                }
            }
        }
        return String.join(", ", parts);
    }

    /**
     * Plays the entries from {@code first} to {@code last} backwards within the present transaction, and drops them.
     *
     * @return the number above which the entries that play them forwards again stand
     */
    long playBack(long first, long last) throws SQLException {
        Database.run(connection, "PRAGMA defer_foreign_keys = ON");
        List<String> inverses = entries(first, last);
        drop(first, last);
        long before = last();
        try (Statement statement = connection.createStatement()) {
            for (String inverse : inverses) {
                statement.executeUpdate(inverse);
            }
        }
        return before;
    }

    private List<String> entries(long first, long last) throws SQLException {
        List<String> found = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement(
                "SELECT inverse FROM temp.undo_journal WHERE seq BETWEEN ? AND ? ORDER BY seq DESC")) {
            select.setLong(1, first);
            select.setLong(2, last);
            try (ResultSet result = select.executeQuery()) {
                while (result.next()) {
                    found.add(result.getString(1));
                }
            }
        }
        return found;
    }

    void drop(long first, long last) throws SQLException {
        try (PreparedStatement delete =
                connection.prepareStatement("DELETE FROM temp.undo_journal WHERE seq BETWEEN ? AND ?")) {
            delete.setLong(1, first);
            delete.setLong(2, last);
            delete.executeUpdate();
        }
    }
}
