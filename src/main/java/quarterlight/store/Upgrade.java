package quarterlight.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import org.sqlite.SQLiteConnection;
import quarterlight.file.Lasting;
import quarterlight.file.Unfinished;

/** Brings the database of an older schema to the present one, after a copy of it was put beside it. */
final class Upgrade {
    private final VisitFolder folder;

    private Upgrade(VisitFolder folder) {
        this.folder = folder;
    }

    static Upgrade of(VisitFolder folder) {
        return new Upgrade(folder);
    }

    void run(Connection connection, Schema schema) throws SQLException, VisitUnwritable {
        keepCopy(connection);
        schema.apply(connection);
        EarlierNames.replace(folder, connection);
    }

    /** The copy appears under its name only when it is whole and lasts. */
    private void keepCopy(Connection connection) throws SQLException, VisitUnwritable {
        try (Unfinished unfinished = Unfinished.in(folder.root())) {
            Path copy = unfinished.folder().resolve("copy.db");
            Database.copy(connection, copy);
            Lasting.force(copy);
            Lasting.move(copy, freeName(Schema.versionOf(connection)));
        } catch (IOException e) {
            throw new VisitUnwritable(
                    folder.root(), "no copy of the database could be put beside it before it is upgraded", e);
        }
    }

    private Path freeName(int version) {
        Path name = folder.root().resolve("visit-schema-" + version + ".db");
        for (int n = 2; Files.exists(name); n++) {
            name = folder.root().resolve("visit-schema-" + version + "-" + n + ".db");
        }
        return name;
    }

    /** A copy in memory in the present schema, for a reader that changes nothing on the disk. */
    static Connection inMemory(Connection source, Schema schema) throws SQLException {
        byte[] bytes = ((SQLiteConnection) source).serialize("main");
        keepNoLog(bytes);
        Connection copy = Database.openInMemory();
        try {
            ((SQLiteConnection) copy).deserialize("main", bytes);
            schema.apply(copy);
            return copy;
        } catch (SQLException e) {
            copy.close();
            throw e;
        }
    }

    /** A database in memory cannot keep a write-ahead log: bytes 18 and 19 of the header say which journal it keeps. */
    private static void keepNoLog(byte[] database) {
        database[18] = 1;
        database[19] = 1;
    }
}
