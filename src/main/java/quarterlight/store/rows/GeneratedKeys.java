package quarterlight.store.rows;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;

/** The number that the database gave to the row added last. */
final class GeneratedKeys implements AutoCloseable {
    private static final String LAST = "SELECT last_insert_rowid()";

    private final PreparedStatement select;

    GeneratedKeys(Connection connection) throws SQLException {
        this.select = connection.prepareStatement(LAST);
    }

    long last() throws SQLException {
        try (ResultSet result = select.executeQuery()) {
            result.next();
            return result.getLong(1);
        }
    }

    @Override
    public void close() throws SQLException {
        select.close();
    }
}
