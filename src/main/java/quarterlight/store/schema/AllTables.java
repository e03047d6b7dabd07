package quarterlight.store.schema;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quarterlight.store.log.Names;
import quarterlight.visit.StoredRows;
import quarterlight.visit.row.RecordKind;

/** Every table of a visit as it is kept. Read from the schema itself, so that a new table or column cannot be forgotten. */
public final class AllTables {
    private static final Map<String, String> NAMES = Map.of(
            "visit", "facts",
            "zone_substrate", "substrates",
            "photo", "photos",
            "intake_remark", "intake-remarks",
            "clock_setting", "clocks",
            "edit_log", "edit-log");
    private static final Pattern FLAG = Pattern.compile("CHECK \\((\\w+) IN \\(0, 1\\)\\)");

    private AllTables() {}

    public static List<StoredRows> read(Connection connection) throws SQLException {
        Map<String, String> names = new HashMap<>(NAMES);
        RecordKind.all().forEach(kind -> names.put(kind.table(), kind.word()));
        List<StoredRows> found = new ArrayList<>();
        for (String table : UndoJournal.tables(connection)) {
            found.add(rows(connection, table, names.getOrDefault(table, table)));
        }
        return List.copyOf(found);
    }

    private static StoredRows rows(Connection connection, String table, String name) throws SQLException {
        Set<String> flags = flags(connection, table);
        try (PreparedStatement select =
                        connection.prepareStatement("SELECT * FROM main." + Names.quoted(table) + " ORDER BY id");
                ResultSet result = select.executeQuery()) {
            List<String> columns = new ArrayList<>();
            for (int i = 1; i <= result.getMetaData().getColumnCount(); i++) {
                columns.add(result.getMetaData().getColumnName(i));
            }
            List<List<Optional<Object>>> rows = new ArrayList<>();
            while (result.next()) {
                List<Optional<Object>> row = new ArrayList<>();
                for (String column : columns) {
                    row.add(cell(result, column, flags.contains(column)));
                }
                rows.add(row);
            }
            return new StoredRows(name, columns, rows);
        }
    }

    private static Optional<Object> cell(ResultSet result, String column, boolean flag) throws SQLException {
        Optional<Object> cell = Optional.ofNullable(result.getObject(column));
        return cell.map(value -> {
            if (value instanceof Number number && !(value instanceof Double)) {
                return flag ? (Object) (number.longValue() != 0) : (Object) number.longValue();
            }
            return value;
        });
    }

    /** Columns that hold yes or no, as the checks of the schema say. */
    private static Set<String> flags(Connection connection, String table) throws SQLException {
        Set<String> found = new HashSet<>();
        try (PreparedStatement select =
                connection.prepareStatement("SELECT sql FROM main.sqlite_schema WHERE type = 'table' AND name = ?")) {
            select.setString(1, table);
            try (ResultSet result = select.executeQuery()) {
                while (result.next()) {
                    Matcher m = FLAG.matcher(result.getString(1));
                    while (m.find()) {
                        found.add(m.group(1));
                    }
                }
            }
        }
        return found;
    }
}
