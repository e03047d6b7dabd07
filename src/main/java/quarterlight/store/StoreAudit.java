package quarterlight.store;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;

/** Checks the database of a visit against itself. */
public final class StoreAudit {
    private static final String SOUND = "ok";

    private StoreAudit() {}

    /**
     * What does not hold, one sentence each: pages and indexes that do not agree, rows that name a row which is not
     * there, cells that cannot be what they are. Empty if all holds.
     */
    public static List<String> of(VisitStore store) {
        List<String> found = new ArrayList<>();
        try {
            found.addAll(store.query(StoreAudit::check));
            store.read();
        } catch (VisitUnreadable e) {
            found.add(e.getMessage());
        }
        return List.copyOf(found);
    }

    private static List<String> check(Connection connection) throws SQLException {
        List<String> found = new ArrayList<>();
        try (Statement statement = connection.createStatement();
                ResultSet result = statement.executeQuery("PRAGMA integrity_check")) {
            while (result.next()) {
                String line = result.getString(1);
                if (!line.equals(SOUND)) {
                    found.add("The database does not agree with itself: " + line + ".");
                }
            }
        }
        try (Statement statement = connection.createStatement();
                ResultSet result = statement.executeQuery("PRAGMA foreign_key_check")) {
            while (result.next()) {
                found.add("Row " + result.getLong(2) + " of table " + result.getString(1) + " names a row of table "
                        + result.getString(3) + " that is not there.");
            }
        }
        return found;
    }
}
