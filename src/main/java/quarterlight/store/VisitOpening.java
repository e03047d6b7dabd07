package quarterlight.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.util.Objects;
import java.util.Optional;
import quarterlight.visit.VisitFacts;

/** How visits are made and opened: with which clock, under which guard of threads, to which schema. Immutable. */
public final class VisitOpening {
    private static final System.Logger LOG = System.getLogger(VisitOpening.class.getName());

    private final Clock clock;
    private final Runnable threadGuard;
    private final Schema schema;

    VisitOpening(Clock clock, Runnable threadGuard, Schema schema) {
        this.clock = Objects.requireNonNull(clock, "clock");
        this.threadGuard = Objects.requireNonNull(threadGuard, "threadGuard");
        this.schema = schema;
    }

    /** Loads what the first visit needs; may be called beside other work, so that the first need not wait. */
    public static void prepare() {
        try {
            Database.openInMemory().close();
        } catch (SQLException e) {
            LOG.log(System.Logger.Level.WARNING, "the database cannot be used", e);
        }
    }

    /** @param clock gives the times of the edit log */
    public static VisitOpening by(Clock clock) {
        return new VisitOpening(clock, () -> {}, Schema.current());
    }

    /** @param guard runs before every use of the database and throws on a thread that must not wait for it */
    public VisitOpening guardedBy(Runnable guard) {
        return new VisitOpening(clock, guard, schema);
    }

    /** See {@link VisitStore#create}. */
    public VisitStore create(Path path, VisitFacts facts) throws VisitProblem {
        threadGuard.run();
        new NewVisit(path, schema).make(facts, clock.instant());
        return forEditing(path);
    }

    /** See {@link VisitStore#openForEditing}. */
    public VisitStore forEditing(Path path) throws VisitProblem {
        threadGuard.run();
        VisitFolder folder = existing(path);
        EditLock lock = EditLock.take(folder);
        try {
            folder.clearLeftovers();
            return edited(folder, lock);
        } catch (VisitProblem | RuntimeException e) {
            lock.close();
            throw e;
        }
    }

    private VisitStore edited(VisitFolder folder, EditLock lock) throws VisitProblem {
        try {
            Connection connection = Database.open(folder.database());
            try {
                if (schema.isOlder(connection, folder.root())) {
                    Upgrade.of(folder).run(connection, schema);
                }
                keepAheadLog(connection);
                Editing editing = new Editing(connection, UndoJournal.install(connection), clock);
                return new VisitStore(folder, threadGuard, connection, Optional.of(lock), Optional.of(editing));
            } catch (SQLException | VisitProblem | RuntimeException e) {
                connection.close();
                throw e;
            }
        } catch (SQLException e) {
            throw problem(folder, e);
        }
    }

    private static VisitProblem problem(VisitFolder folder, SQLException e) {
        return Failed.isDamaged(e)
                ? new VisitUnreadable(folder.root(), Failed.reason(e), e)
                : new VisitUnwritable(folder.root(), Failed.reason(e), e);
    }

    /**
     * Lets others read while this process edits, and makes each commit reach the disk. If a reader holds the file at
     * this moment the visit is edited with a rollback journal instead, in which readers may have to wait for a commit.
     */
    private static void keepAheadLog(Connection connection) throws SQLException {
        try {
            Database.ask(connection, "PRAGMA journal_mode = WAL");
        } catch (SQLException e) {
            if (!Failed.isBusy(e)) {
                throw e;
            }
            LOG.log(System.Logger.Level.DEBUG, "a reader holds the visit; it keeps its rollback journal", e);
        }
        Database.run(connection, "PRAGMA synchronous = EXTRA");
    }

    /** Brings everything into the one file, which is plain if nobody else has it open. */
    static void settle(Connection connection) throws SQLException {
        Database.run(connection, "PRAGMA busy_timeout = 0");
        try {
            Database.ask(connection, "PRAGMA wal_checkpoint(TRUNCATE)");
            Database.ask(connection, "PRAGMA journal_mode = DELETE");
        } catch (SQLException e) {
            if (!Failed.isBusy(e)) {
                throw e;
            }
            LOG.log(System.Logger.Level.DEBUG, "a reader holds the visit; its log stays beside it", e);
        }
    }

    /** See {@link VisitStore#openForReading}. */
    public VisitStore forReading(Path path) throws VisitProblem {
        threadGuard.run();
        VisitFolder folder = existing(path);
        try {
            Connection connection = readable(folder);
            try {
                if (schema.isOlder(connection, folder.root())) {
                    Connection upgraded = Upgrade.inMemory(connection, schema);
                    connection.close();
                    connection = upgraded;
                }
                return new VisitStore(folder, threadGuard, connection, Optional.empty(), Optional.empty());
            } catch (SQLException | VisitProblem | RuntimeException e) {
                connection.close();
                throw e;
            }
        } catch (SQLException e) {
            throw new VisitUnreadable(folder.root(), Failed.reason(e), e);
        }
    }

    private static Connection readable(VisitFolder folder) throws SQLException {
        Connection connection = Database.openReadOnly(folder.database());
        try {
            Schema.versionOf(connection);
            return connection;
        } catch (SQLException e) {
            connection.close();
            if (Failed.isNoAccess(e) && !hasLog(folder)) {
                return Database.openImmutable(folder.database());
            }
            throw e;
        }
    }

    private static boolean hasLog(VisitFolder folder) {
        try {
            return Files.size(folder.root().resolve("visit.db-wal")) > 0;
        } catch (IOException e) {
            return false;
        }
    }

    private static VisitFolder existing(Path path) throws VisitMissing {
        VisitFolder folder = new VisitFolder(path);
        if (!Files.isRegularFile(folder.database())) {
            throw new VisitMissing(path);
        }
        return folder;
    }
}
