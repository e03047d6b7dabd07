package quarterlight.store.schema;

import static quarterlight.store.log.Names.quoted;
import static quarterlight.store.log.Names.text;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import quarterlight.store.Editing;
import quarterlight.store.log.CurrentRowDigests;
import quarterlight.store.log.Names;
import quarterlight.store.log.RowStates;

/**
 * The inverse of every row change since the visit was opened, written by temporary triggers that are generated from the
 * tables. Playing a range of it backwards undoes the range, and the same triggers write the inverse of that.
 * <p>Source: SQLite technical note "Automatic Undo/Redo Using SQLite"; adapted: ranges are kept by {@link Editing}.
 */
public final class UndoJournal {
    /** Tables that no step brings back, and why. */
    static final Map<String, String> UNTRACKED =
            Map.of("edit_log", "it tells what happened, and an undo is one of the things that happen");

    private final Connection connection;

    private UndoJournal(Connection connection) {
        this.connection = connection;
    }

    /** Sets up the journal of a connection; it lasts as long as the connection. */
    public static UndoJournal install(Connection connection) throws SQLException {
        Database.run(
                connection,
                """
                CREATE TEMP TABLE undo_journal (
                    seq        INTEGER PRIMARY KEY,
                    changed    TEXT NOT NULL,
                    changed_id INTEGER NOT NULL,
                    way        TEXT NOT NULL,
                    inverse    TEXT NOT NULL
                ) STRICT
                """);
        for (String table : tables(connection)) {
            if (!UNTRACKED.containsKey(table)) {
                track(connection, table);
            }
        }
        return new UndoJournal(connection);
    }

    public static List<String> tables(Connection connection) throws SQLException {
        return column(
                connection,
                "SELECT name FROM main.sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite\\_%' ESCAPE '\\'"
                        + " ORDER BY name");
    }

    /** Names of columns go into statements as identifiers, into the texts of inverse statements as texts that hold identifiers. */
    private static void track(Connection connection, String table) throws SQLException {
        List<String> columns =
                column(connection, "SELECT name FROM pragma_table_info(" + text(table) + ") ORDER BY cid");
        String differs = columns.stream()
                .map(c -> "OLD." + quoted(c) + " IS NOT NEW." + quoted(c))
                .collect(Collectors.joining(" OR "));
        String restored = columns.stream()
                .map(c -> text(quoted(c) + " = ") + " || quote(OLD." + quoted(c) + ")")
                .collect(Collectors.joining(" || ', ' || "));
        String values =
                columns.stream().map(c -> "quote(OLD." + quoted(c) + ")").collect(Collectors.joining(" || ', ' || "));
        String names = columns.stream().map(Names::quoted).collect(Collectors.joining(", "));
        String name = "main." + quoted(table);
        trigger(
                connection,
                table,
                "AFTER INSERT",
                "added",
                "NEW",
                text("DELETE FROM " + name + " WHERE id = ") + " || NEW.id");
        trigger(
                connection,
                table,
                "AFTER UPDATE",
                "changed",
                "NEW",
                text("UPDATE " + name + " SET ") + " || " + restored + " || ' WHERE id = ' || NEW.id",
                differs);
        trigger(
                connection,
                table,
                "BEFORE DELETE",
                "removed",
                "OLD",
                text("INSERT INTO " + name + " (" + names + ") VALUES (") + " || " + values + " || ')'");
    }

    /** @param row NEW or OLD, whose number is noted */
    private static void trigger(
            Connection connection, String table, String event, String way, String row, String inverse, String... when)
            throws SQLException {
        String condition = when.length == 0 ? "" : " WHEN " + when[0];
        Database.run(
                connection,
                "CREATE TEMP TRIGGER " + quoted("undo_" + way + "_" + table) + " " + event + " ON main."
                        + quoted(table) + condition
                        + " BEGIN INSERT INTO undo_journal (changed, changed_id, way, inverse) VALUES (" + text(table)
                        + ", " + row + ".id, " + text(way) + ", " + inverse + "); END");
    }

    private static List<String> column(Connection connection, String sql) throws SQLException {
        List<String> found = new ArrayList<>();
        try (PreparedStatement statement = connection.prepareStatement(sql);
                ResultSet result = statement.executeQuery()) {
            while (result.next()) {
                found.add(result.getString(1));
            }
        }
        return found;
    }

    /** The number of the entry written last; 0 if there is none. */
    public long last() throws SQLException {
        return Database.askNumber(connection, "SELECT coalesce(max(seq), 0) FROM temp.undo_journal");
    }

    /** The tables changed by the entries above {@code after}. */
    public List<String> tables(long after) throws SQLException {
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

    private static final String NUMBERS = "SELECT changed_id FROM temp.undo_journal WHERE changed = ? AND seq > ?";

    /** What the rows changed by the entries above {@code after} are now. */
    public RowStates states(long after) throws SQLException {
        Map<String, Set<Long>> changed = new TreeMap<>();
        try (PreparedStatement select =
                connection.prepareStatement("SELECT changed, changed_id FROM temp.undo_journal WHERE seq > ?")) {
            select.setLong(1, after);
            try (ResultSet result = select.executeQuery()) {
                while (result.next()) {
                    changed.computeIfAbsent(result.getString(1), table -> new TreeSet<>())
                            .add(result.getLong(2));
                }
            }
        }
        RowStates states = new RowStates();
        CurrentRowDigests now = new CurrentRowDigests(connection);
        for (Map.Entry<String, Set<Long>> table : changed.entrySet()) {
            now.add(table.getKey(), NUMBERS, after, table.getValue(), states);
        }
        return states;
    }

    /** The rows changed by the entries above {@code after} in words: {@code pin added 3, photo changed 1}. */
    public String summary(long after) throws SQLException {
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
    public long playBack(long first, long last) throws SQLException {
        Database.run(connection, "PRAGMA defer_foreign_keys = ON");
        List<String> inverses = entries(first, last);
        drop(first, last);
        long before = last();
        for (String inverse : inverses) {
            Database.run(connection, inverse);
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

    public void drop(long first, long last) throws SQLException {
        try (PreparedStatement delete =
                connection.prepareStatement("DELETE FROM temp.undo_journal WHERE seq BETWEEN ? AND ?")) {
            delete.setLong(1, first);
            delete.setLong(2, last);
            delete.executeUpdate();
        }
    }
}
