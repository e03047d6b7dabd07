package quarterlight.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import quarterlight.store.schema.Database;

/**
 * The rows of each table as they were read last, so that a pin made in a visit of thousands of photos does not cost reading all of them
 * again. A table is read anew after a change of it by this connection, every table after a change by another one. The store sees to it
 * that calls take turns.
 */
final class KeptRows {
    /** The table of photos; they are read together with {@link #REMARKS}. */
    static final String PHOTOS = "photo";

    private static final String REMARKS = "intake_remark";

    private final Map<String, List<?>> rows = new HashMap<>();
    private long version = -1;

    /** Reads a table. */
    interface Reading<T> {
        List<T> read() throws SQLException;
    }

    /**
     * To be called within the transaction that reads, before anything is read: forgets all if another connection has written since.
     * <p>Source: SQLite documentation of {@code PRAGMA data_version}: it changes with commits of other connections only.
     */
    void begin(Connection connection) throws SQLException {
        long now = Database.askNumber(connection, "PRAGMA data_version");
        if (now != version) {
            rows.clear();
            version = now;
        }
    }

    /** Forgets tables that this connection has changed. */
    void forget(Set<String> tables) {
        rows.keySet().removeAll(tables);
        if (tables.contains(REMARKS)) {
            rows.remove(PHOTOS);
        }
    }

    /** The rows kept of a table; read if there are none. The caller names one kind of row per table. */
    @SuppressWarnings("unchecked")
    <T> List<T> of(String table, Reading<T> reading) throws SQLException {
        List<?> kept = rows.get(table);
        if (kept == null) {
            List<T> fresh = reading.read();
            rows.put(table, fresh);
            return fresh;
        }
        return (List<T>) kept;
    }
}
