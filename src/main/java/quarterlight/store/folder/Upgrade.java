package quarterlight.store.folder;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import org.sqlite.SQLiteConnection;
import quarterlight.file.DurableFiles;
import quarterlight.file.StagingFolder;
import quarterlight.store.log.LogChain;
import quarterlight.store.log.LogReplay;
import quarterlight.store.log.RowStates;
import quarterlight.store.problem.VisitUnwritable;
import quarterlight.store.schema.Database;
import quarterlight.store.schema.Schema;
import quarterlight.store.schema.UndoJournal;

/** Brings the database of an older schema to the present one, after a copy of it was put beside it. */
public final class Upgrade {
    private final VisitFolder folder;

    private Upgrade(VisitFolder folder) {
        this.folder = folder;
    }

    public static Upgrade of(VisitFolder folder) {
        return new Upgrade(folder);
    }

    public void run(Connection connection, Schema schema, Instant now) throws SQLException, VisitUnwritable {
        keepCopy(connection);
        apply(connection, schema, now);
        begin(connection, now);
        OriginalNameUpgrade.replace(folder, connection);
    }

    /** Brings a database to a schema, and lets its log tell which rows that changed; rows that were not as the log has them stay so. */
    public static void apply(Connection connection, Schema schema, Instant now) throws SQLException {
        boolean chained =
                LogChain.isKept(connection) && new LogChain(connection).head().isPresent();
        if (!chained) {
            schema.apply(connection);
            return;
        }
        List<String> before = UndoJournal.tables(connection);
        LogReplay.Agreed agreed = LogReplay.of(connection).agreed(before);
        schema.apply(connection, inside -> {
            LogChain chain = new LogChain(inside);
            RowStates changed = agreed.changed(inside, before, UndoJournal.tables(inside));
            chain.add(chain.head(), new LogChain.Saying(now, "Upgrade to schema " + schema.version(), ""), changed);
        });
    }

    /** The copy appears under its name only when it is whole and lasts. */
    private void keepCopy(Connection connection) throws SQLException, VisitUnwritable {
        try (StagingFolder unfinished = StagingFolder.in(folder.root())) {
            Path copy = unfinished.folder().resolve("copy.db");
            Database.copy(connection, copy);
            DurableFiles.force(copy);
            DurableFiles.move(copy, freeName(Schema.versionOf(connection)));
        } catch (IOException e) {
            throw new VisitUnwritable(
                    folder.root(), "no copy of the database could be put beside it before it is upgraded", e);
        }
    }

    /** Begins the chain of a log that has none. */
    private static void begin(Connection connection, Instant now) throws SQLException {
        LogChain chain = new LogChain(connection);
        if (chain.head().isEmpty()) {
            chain.begin(LogChain.BEGINS, now);
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
    public static Connection inMemory(Connection source, Schema schema, Instant now) throws SQLException {
        byte[] bytes = ((SQLiteConnection) source).serialize("main");
        keepNoLog(bytes);
        Connection copy = Database.openInMemory();
        try {
            ((SQLiteConnection) copy).deserialize("main", bytes);
            apply(copy, schema, now);
            begin(copy, now);
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
