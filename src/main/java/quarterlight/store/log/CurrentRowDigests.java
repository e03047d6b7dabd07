package quarterlight.store.log;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** The digests of rows as they are at this moment. */
public final class CurrentRowDigests {
    private final Connection connection;

    public CurrentRowDigests(Connection connection) {
        this.connection = connection;
    }

    /** Of every row of a table, by its number. */
    public Map<Long, String> of(String table) throws SQLException {
        Map<Long, String> found = new TreeMap<>();
        try (PreparedStatement select = connection.prepareStatement("SELECT * FROM main." + Names.quoted(table));
                ResultSet result = select.executeQuery()) {
            RowDigest digest = new RowDigest(result);
            while (result.next()) {
                found.put(result.getLong("id"), digest.ofRow());
            }
        }
        return found;
    }

    /**
     * Adds what rows of a table are now, or that they are gone.
     *
     * @param numbers a query that gives their numbers, with two things bound: the table, and {@code after}
     */
    public void add(String table, String numbers, long after, Set<Long> ids, RowStates states) throws SQLException {
        ids.forEach(id -> states.put(table, id, RowStates.GONE));
        try (PreparedStatement select = connection.prepareStatement(
                "SELECT * FROM main." + Names.quoted(table) + " WHERE id IN (" + numbers + ")")) {
            select.setString(1, table);
            select.setLong(2, after);
            try (ResultSet result = select.executeQuery()) {
                int id = result.findColumn("id");
                RowDigest digest = new RowDigest(result);
                while (result.next()) {
                    states.put(table, result.getLong(id), digest.ofRow());
                }
            }
        }
    }
}
