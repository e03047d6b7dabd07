package quarterlight.store.takeover;

import static quarterlight.store.log.Names.quoted;
import static quarterlight.store.log.Names.text;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Copies the rows of one table from a database that is not trusted into one that declares the same table by itself. */
final class RowCopy {
    private static final int MAX_ROWS = 1_000_000;
    private static final int MAX_REASON = 160;

    private final Connection from;
    private final Connection into;
    private final TakeoverNotes slip;
    private final LeftOutRows leftOut;
    private long roomBytes;

    /** @param roomBytes what all cells together may hold: rows of a damaged file can each claim the same pages, and so hold more than the file does */
    RowCopy(Connection from, Connection into, TakeoverNotes slip, LeftOutRows leftOut, long roomBytes) {
        this.from = from;
        this.into = into;
        this.slip = slip;
        this.leftOut = leftOut;
        this.roomBytes = roomBytes;
    }

    /** Only columns that both have, that are stored, and that are named one by one: an unknown name in double quotes would be read as a text. */
    void copy(String table) throws SQLException {
        List<String> columns;
        try {
            Set<String> there = new HashSet<>(columns(from, table));
            columns = columns(into, table).stream().filter(there::contains).toList();
            missing(table, there);
        } catch (SQLException e) {
            unreadable(table, "its columns cannot be read", e);
            return;
        }
        if (columns.contains("id")) {
            rows(table, columns);
        } else {
            slip.add("Table " + table + " has no column id: left out.");
        }
    }

    private void missing(String table, Set<String> there) throws SQLException {
        Set<String> wanted = new HashSet<>(columns(into, table));
        there.stream()
                .filter(name -> !wanted.contains(name))
                .sorted()
                .forEach(name -> slip.add("Table " + table + " has a column \"" + Declared.shown(name)
                        + "\", which is none of this program's: left out."));
        wanted.stream()
                .filter(name -> !there.contains(name))
                .sorted()
                .forEach(name -> slip.add("Table " + table + " lacks the column " + name + ": left empty."));
    }

    private static List<String> columns(Connection connection, String table) throws SQLException {
        List<String> found = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement("PRAGMA main.table_xinfo(" + text(table) + ")");
                ResultSet result = select.executeQuery()) {
            while (result.next()) {
                if (result.getInt("hidden") == 0) {
                    found.add(result.getString("name"));
                }
            }
        }
        return found;
    }

    private void rows(String table, List<String> columns) throws SQLException {
        String names = columns.stream().map(c -> quoted(c)).collect(Collectors.joining(", "));
        String marks = columns.stream().map(c -> "?").collect(Collectors.joining(", "));
        long last = 0;
        int count = 0;
        try (PreparedStatement insert = into.prepareStatement(
                "INSERT INTO main." + quoted(table) + " (" + names + ") VALUES (" + marks + ")")) {
            try (PreparedStatement select =
                            from.prepareStatement("SELECT " + names + " FROM main." + quoted(table) + " NOT INDEXED");
                    ResultSet result = select.executeQuery()) {
                while (result.next()) {
                    if (++count > MAX_ROWS) {
                        slip.add("Table " + table + " has more than " + MAX_ROWS + " rows: the rest was left out.");
                        return;
                    }
                    last = result.getLong("id");
                    if (!row(table, columns, result, insert)) {
                        slip.add(
                                "Table " + table + " holds more than its file can: left out from row " + last + " on.");
                        return;
                    }
                }
            } catch (SQLException e) {
                unreadable(table, count == 0 ? "it cannot be read" : "it cannot be read beyond row " + last, e);
            }
        }
    }

    /** False if there is no room for the row. */
    private boolean row(String table, List<String> columns, ResultSet result, PreparedStatement insert)
            throws SQLException {
        Object[] cells = new Object[columns.size()];
        for (int i = 0; i < cells.length; i++) {
            cells[i] = result.getObject(i + 1);
            roomBytes -= bytes(cells[i]);
        }
        if (roomBytes < 0) {
            return false;
        }
        try {
            for (int i = 0; i < cells.length; i++) {
                insert.setObject(i + 1, cells[i]);
            }
            insert.executeUpdate();
        } catch (SQLException e) {
            Object id = cells[columns.indexOf("id")];
            leftOut.add(table, id instanceof Number number ? number.longValue() : 0, reason(e));
        }
        return true;
    }

    private static long bytes(Object cell) {
        if (cell instanceof byte[] bytes) {
            return bytes.length;
        }
        return cell instanceof String text ? text.length() : 0;
    }

    private void unreadable(String table, String what, SQLException e) {
        slip.add("Table " + table + ": " + what + " (" + reason(e) + "); what lies there was left out.");
    }

    static String reason(SQLException e) {
        String said = String.valueOf(e.getMessage())
                .replaceFirst("(?s)^.*constraint failed: (.*)\\)$", "it breaks the rule $1")
                .replaceFirst("(?s)^\\[SQLITE_\\w+\\]\\s*", "")
                .replaceAll("\\p{C}+", " ")
                .strip();
        return said.length() <= MAX_REASON ? said : said.substring(0, MAX_REASON) + "…";
    }
}
