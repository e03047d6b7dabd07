package quarterlight.store.schema;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.sqlite.SQLiteConfig;
import quarterlight.store.takeover.DatabaseTakeover;

/** Opens connections to SQLite files, and runs the few statements that are no query of a table. */
public final class Database {
    private static final int WAIT_MS = 10_000;

    private Database() {}

    /** Opens or makes a file for reading and writing. */
    public static Connection open(Path file) throws SQLException {
        return connect(address(file), WAIT_MS);
    }

    /** Opens a file for reading and writing, without waiting for another process. */
    public static Connection openAtOnce(Path file) throws SQLException {
        return connect(address(file), 0);
    }

    /** Opens a file that exists for reading. */
    public static Connection openReadOnly(Path file) throws SQLException {
        return connect(address(file) + "?mode=ro", WAIT_MS);
    }

    /** Opens a file on a medium that nobody can write, so that SQLite needs no files beside it. */
    public static Connection openImmutable(Path file) throws SQLException {
        return connect(address(file) + "?mode=ro&immutable=1", WAIT_MS);
    }

    /** Opens a file that came from somebody else for reading; nothing of it is run. */
    public static Connection openSuspect(Path file, boolean alone, long maxMillis) throws SQLException {
        Connection connection = alone ? openImmutable(file) : openReadOnly(file);
        try {
            DatabaseTakeover.restrain(connection, maxMillis);
            return connection;
        } catch (SQLException e) {
            connection.close();
            throw e;
        }
    }

    public static Connection openInMemory() throws SQLException {
        return connect("jdbc:sqlite::memory:", WAIT_MS);
    }

    /** A file URI, so that every character of a path is possible. */
    private static String address(Path file) {
        return "jdbc:sqlite:" + file.toAbsolutePath().toUri();
    }

    private static Connection connect(String address, int waitMs) throws SQLException {
        SQLiteConfig config = new SQLiteConfig();
        config.enforceForeignKeys(true);
        config.setBusyTimeout(waitMs);
        config.setTempStore(SQLiteConfig.TempStore.MEMORY);
        return config.createConnection(address);
    }

    /** Writes a whole copy of the main database to a file that does not exist. */
    public static void copy(Connection connection, Path target) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement("VACUUM main INTO ?")) {
            statement.setString(1, target.toAbsolutePath().toString());
            statement.executeUpdate();
        }
    }

    /** Runs one statement; whatever a text holds behind its first statement is never run. */
    public static void run(Connection connection, String sql) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            statement.execute();
        }
    }

    /** Runs all statements of a text of the program's own. */
    static void runScript(Connection connection, String sql) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.executeUpdate(sql);
        }
    }

    /** The first cell of the first row as text, as a PRAGMA answers. */
    public static String ask(Connection connection, String sql) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(sql);
                ResultSet result = statement.executeQuery()) {
            return result.next() ? String.valueOf(result.getString(1)) : "";
        }
    }

    public static long askNumber(Connection connection, String sql) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(sql);
                ResultSet result = statement.executeQuery()) {
            return result.next() ? result.getLong(1) : 0;
        }
    }
}
