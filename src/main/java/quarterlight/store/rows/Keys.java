package quarterlight.store.rows;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;

/** The number that the database gave to the row added last. */
final class Keys {
    private Keys() {}

    private static final String LAST = "SELECT last_insert_rowid()";

    static long last(Connection connection) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement(LAST);
                ResultSet result = select.executeQuery()) {
            result.next();
            return result.getLong(1);
        }
    }
}
