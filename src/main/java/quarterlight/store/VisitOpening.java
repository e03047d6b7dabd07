package quarterlight.store;

import static quarterlight.language.Sentences.say;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import quarterlight.store.folder.DatabaseFiles;
import quarterlight.store.folder.EditLock;
import quarterlight.store.folder.NewVisit;
import quarterlight.store.folder.Upgrade;
import quarterlight.store.folder.VisitFile;
import quarterlight.store.folder.VisitFolder;
import quarterlight.store.log.ComputerKey;
import quarterlight.store.log.HeadFile;
import quarterlight.store.log.LogChain;
import quarterlight.store.log.LogHead;
import quarterlight.store.problem.EditFailed;
import quarterlight.store.problem.VisitMissing;
import quarterlight.store.problem.VisitProblem;
import quarterlight.store.problem.VisitUnreadable;
import quarterlight.store.problem.VisitUnwritable;
import quarterlight.store.schema.Database;
import quarterlight.store.schema.Declarations;
import quarterlight.store.schema.Schema;
import quarterlight.store.schema.UndoJournal;
import quarterlight.store.takeover.Declared;
import quarterlight.visit.VisitFacts;

/**
 * How visits are made and opened: with which clock, under which guard of threads, to which schema, and by which key of the computer. A visit that
 * bears the seal of this computer, declares what it should and holds the end of its log is opened as it is; any other is taken over row by
 * row. Immutable.
 */
public final class VisitOpening {
    private static final System.Logger LOG = System.getLogger(VisitOpening.class.getName());

    private final Clock clock;
    private final Runnable threadGuard;
    private final Schema schema;
    private final ComputerKey key;
    private final Consumer<TakeoverReport> teller;

    public VisitOpening(Clock clock, Runnable threadGuard, Schema schema) {
        this(clock, threadGuard, schema, ComputerKey.NONE, report -> {});
    }

    private VisitOpening(
            Clock clock, Runnable threadGuard, Schema schema, ComputerKey key, Consumer<TakeoverReport> teller) {
        this.clock = Objects.requireNonNull(clock, "clock");
        this.threadGuard = Objects.requireNonNull(threadGuard, "threadGuard");
        this.schema = schema;
        this.key = Objects.requireNonNull(key, "key");
        this.teller = Objects.requireNonNull(teller, "teller");
    }

    /** Loads what the first visit needs; may be called beside other work, so that the first need not wait. */
    public static void prepare() {
        try {
            Declarations.of(Schema.current());
        } catch (SQLException e) {
            LOG.log(System.Logger.Level.WARNING, "the database cannot be used", e);
        }
    }

    /**
     * Without a key every visit counts as this computer's own.
     *
     * @param clock gives the times of the edit log
     */
    public static VisitOpening by(Clock clock) {
        return new VisitOpening(clock, () -> {}, Schema.current());
    }

    /** @param guard runs before every use of the database and throws on a thread that must not wait for it */
    public VisitOpening guardedBy(Runnable guard) {
        return new VisitOpening(clock, guard, schema, key, teller);
    }

    /** @param settings the folder that keeps the key by which this computer knows its own visits; made if it is not there */
    public VisitOpening onThisComputer(Path settings) {
        return new VisitOpening(clock, threadGuard, schema, ComputerKey.in(settings), teller);
    }

    /** Takes every visit for one from somebody else, and tells nobody but the audit what was left out. */
    public VisitOpening trustingNothing() {
        return new VisitOpening(clock, threadGuard, schema, ComputerKey.stranger(), report -> {});
    }

    /**
     * Takes the database of a folder over that was just unpacked, and seals it; nobody else may have it open.
     *
     * @return what was left out or set right
     */
    public TakeoverReport receive(Path path) throws VisitProblem {
        threadGuard.run();
        VisitFolder folder = existing(path);
        requireNoHotJournal(folder);
        try {
            return new VisitTakeover(folder, schema, clock.instant())
                    .onDisk(key, new DatabaseFiles(folder).isQuiet(), Optional.empty());
        } catch (SQLException e) {
            throw new VisitUnreadable(folder.root(), EditFailed.reason(e), e);
        }
    }

    /** @param listener told, before the visit opens, what of a visit that was received was left out; not told if that is nothing */
    public VisitOpening telling(Consumer<TakeoverReport> listener) {
        return new VisitOpening(clock, threadGuard, schema, key, listener);
    }

    /** See {@link VisitStore#create}. */
    public VisitStore create(Path path, VisitFacts facts) throws VisitProblem {
        threadGuard.run();
        new NewVisit(path, schema, key).make(facts, clock.instant());
        return forEditing(path);
    }

    /** See {@link VisitStore#openForEditing}. */
    public VisitStore forEditing(Path path) throws VisitProblem {
        threadGuard.run();
        VisitFolder folder = existing(path);
        clearLock(folder);
        EditLock lock = EditLock.take(folder);
        try {
            folder.clearLeftovers();
            VisitFile.makeIfMissing(folder.root());
            return edited(folder, lock);
        } catch (VisitProblem | RuntimeException e) {
            lock.close();
            throw e;
        }
    }

    private static void clearLock(VisitFolder folder) throws VisitUnwritable {
        try {
            new DatabaseFiles(folder).clearLock();
        } catch (IOException e) {
            throw new VisitUnwritable(folder.root(), say("problem.lock"), e);
        }
    }

    private VisitStore edited(VisitFolder folder, EditLock lock) throws VisitProblem {
        try {
            Optional<HeadFile.Kept> kept = HeadFile.read(folder.head(), key);
            OpenedDatabase opened = OpenedDatabase.PLAIN;
            Optional<Connection> own = own(folder, kept, true);
            if (own.isEmpty()) {
                TakeoverReport report = new VisitTakeover(folder, schema, clock.instant())
                        .onDisk(key, new DatabaseFiles(folder).isQuiet(), kept.map(HeadFile.Kept::head));
                tell(report);
                opened = new OpenedDatabase(report.lines(), Optional.empty());
            }
            Connection connection = own.isPresent() ? own.get() : Database.open(folder.database());
            return editing(folder, lock, connection, opened);
        } catch (SQLException e) {
            throw problem(folder, e);
        }
    }

    private VisitStore editing(VisitFolder folder, EditLock lock, Connection connection, OpenedDatabase opened)
            throws SQLException, VisitProblem {
        try {
            if (schema.isOlder(connection, folder.root())) {
                Upgrade.of(folder).run(connection, schema, clock.instant());
            }
            keepAheadLog(connection);
            HeadFile head = HeadFile.open(folder.head(), key);
            Optional<LogHead> end = new LogChain(connection).head();
            if (end.isPresent()) {
                head.write(end.get());
            }
            Editing editing = new Editing(connection, UndoJournal.install(connection), clock, head);
            return new VisitStore(folder, threadGuard, connection, Optional.of(lock), Optional.of(editing), opened);
        } catch (IOException e) {
            connection.close();
            throw new VisitUnwritable(folder.root(), say("problem.head"), e);
        } catch (SQLException | VisitProblem | RuntimeException e) {
            connection.close();
            throw e;
        }
    }

    private void tell(TakeoverReport report) {
        if (!report.isEmpty()) {
            LOG.log(
                    System.Logger.Level.INFO,
                    "a visit was taken over, " + report.lines().size() + " things left out");
            teller.accept(report);
        }
    }

    /**
     * A connection to a database that this computer wrote and that is as it was written; empty if it must be taken over row by row.
     *
     * @throws VisitUnreadable also if an edit that was cut off cannot be taken back
     */
    private Optional<Connection> own(VisitFolder folder, Optional<HeadFile.Kept> kept, boolean writing)
            throws SQLException, VisitProblem {
        boolean sealed = !key.tellsApart() || kept.map(HeadFile.Kept::sealed).orElse(false);
        if (!sealed) {
            requireNoHotJournal(folder);
            return Optional.empty();
        }
        Connection connection = writing ? Database.open(folder.database()) : readable(folder);
        boolean keep = false;
        try {
            schema.isOlder(connection, folder.root());
            keep = isAsDeclared(connection) && holdsHead(connection, kept);
            return keep ? Optional.of(connection) : Optional.empty();
        } finally {
            if (!keep) {
                connection.close();
            }
        }
    }

    private boolean isAsDeclared(Connection connection) throws SQLException {
        int version = Schema.versionOf(connection);
        return version > 0
                && Declared.of(connection)
                        .sameAs(Declarations.of(schema.at(version)).declared());
    }

    /** The log may go on beyond the head, which is written after each commit; it may not end before it. */
    private static boolean holdsHead(Connection connection, Optional<HeadFile.Kept> kept) throws SQLException {
        return kept.isEmpty()
                || LogChain.isKept(connection)
                        && new LogChain(connection).holds(kept.get().head());
    }

    /** A journal from outside is not played back: it may name other files than the database. */
    private static void requireNoHotJournal(VisitFolder folder) throws VisitUnreadable {
        if (new DatabaseFiles(folder).hasHotJournal()) {
            throw new VisitUnreadable(folder.root(), say("problem.hot"), null);
        }
    }

    private static VisitProblem problem(VisitFolder folder, SQLException e) {
        return EditFailed.isDamaged(e)
                ? new VisitUnreadable(folder.root(), EditFailed.reason(e), e)
                : new VisitUnwritable(folder.root(), EditFailed.reason(e), e);
    }

    /**
     * Lets others read while this process edits, and makes each commit reach the disk. If a reader holds the file at
     * this moment the visit is edited with a rollback journal instead, in which readers may have to wait for a commit.
     */
    private static void keepAheadLog(Connection connection) throws SQLException {
        try {
            Database.ask(connection, "PRAGMA journal_mode = WAL");
        } catch (SQLException e) {
            if (!EditFailed.isBusy(e)) {
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
            if (!EditFailed.isBusy(e)) {
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
            Optional<HeadFile.Kept> kept = HeadFile.read(folder.head(), key);
            Optional<Connection> own = own(folder, kept, false);
            return own.isPresent() ? asItIs(folder, own.get(), kept) : takenOver(folder, kept);
        } catch (SQLException e) {
            throw new VisitUnreadable(folder.root(), EditFailed.reason(e), e);
        }
    }

    private VisitStore asItIs(VisitFolder folder, Connection connection, Optional<HeadFile.Kept> kept)
            throws SQLException, VisitProblem {
        try {
            boolean older = schema.isOlder(connection, folder.root());
            OpenedDatabase opened = new OpenedDatabase(
                    List.of(), kept.isEmpty() && LogChain.isKept(connection) ? Optional.of(NO_HEAD) : Optional.empty());
            Connection present = connection;
            if (older) {
                present = Upgrade.inMemory(connection, schema, clock.instant());
                connection.close();
            }
            return new VisitStore(folder, threadGuard, present, Optional.empty(), Optional.empty(), opened);
        } catch (SQLException | VisitProblem | RuntimeException e) {
            connection.close();
            throw e;
        }
    }

    private VisitStore takenOver(VisitFolder folder, Optional<HeadFile.Kept> kept) throws SQLException, VisitProblem {
        VisitTakeover.Received received = new VisitTakeover(folder, schema, clock.instant())
                .intoMemory(new DatabaseFiles(folder).isQuiet(), kept.map(HeadFile.Kept::head));
        tell(new TakeoverReport(folder.root(), received.lines(), Optional.of(folder.database())));
        OpenedDatabase opened = new OpenedDatabase(received.lines(), Optional.empty());
        return new VisitStore(folder, threadGuard, received.connection(), Optional.empty(), Optional.empty(), opened);
    }

    /** What SQLite reads and writes beside a database; of a pipe it would wait for without end. */
    private static final List<String> BESIDE = List.of("visit.db-journal", "visit.db-wal", "visit.db-shm");

    private static final String NO_HEAD =
            "The file visit.head is gone or says nothing that can be understood, so nothing"
                    + " tells whether the end of the edit log was cut off.";

    /** An edit that was cut off is taken back by SQLite first; nobody is shown half of it. */
    private static Connection readable(VisitFolder folder) throws SQLException, VisitUnreadable {
        Connection connection = Database.openReadOnly(folder.database());
        try {
            Schema.versionOf(connection);
            return connection;
        } catch (SQLException e) {
            connection.close();
            DatabaseFiles beside = new DatabaseFiles(folder);
            if (EditFailed.isNoAccess(e) && beside.hasHotJournal()) {
                return recovered(folder);
            }
            if (EditFailed.isNoAccess(e) && !beside.hasLog()) {
                return Database.openImmutable(folder.database());
            }
            throw e;
        }
    }

    private static Connection recovered(VisitFolder folder) throws SQLException, VisitUnreadable {
        try (Connection writing = Database.open(folder.database())) {
            Schema.versionOf(writing);
        } catch (SQLException e) {
            throw new VisitUnreadable(folder.root(), say("problem.cut"), e);
        }
        return Database.openReadOnly(folder.database());
    }

    private static VisitFolder existing(Path path) throws VisitMissing, VisitUnreadable {
        VisitFolder folder = new VisitFolder(VisitFile.folderOf(path));
        if (!Files.isRegularFile(folder.database())) {
            throw new VisitMissing(path);
        }
        if (!Files.isRegularFile(folder.database(), LinkOption.NOFOLLOW_LINKS)) {
            throw new VisitUnreadable(path, say("problem.link"), null);
        }
        for (String beside : BESIDE) {
            Path file = path.resolve(beside);
            if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)
                    && !Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
                throw new VisitUnreadable(path, say("problem.beside", beside), null);
            }
        }
        return folder;
    }
}
