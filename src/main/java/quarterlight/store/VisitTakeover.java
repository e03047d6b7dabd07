package quarterlight.store;

import static quarterlight.language.Sentences.say;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import quarterlight.file.DurableFiles;
import quarterlight.file.StagingFolder;
import quarterlight.store.folder.OriginalNameUpgrade;
import quarterlight.store.folder.Upgrade;
import quarterlight.store.folder.VisitFolder;
import quarterlight.store.log.ComputerKey;
import quarterlight.store.log.HeadFile;
import quarterlight.store.log.LogChain;
import quarterlight.store.log.LogHead;
import quarterlight.store.problem.VisitProblem;
import quarterlight.store.problem.VisitUnreadable;
import quarterlight.store.problem.VisitUnwritable;
import quarterlight.store.rows.TableShape;
import quarterlight.store.schema.Database;
import quarterlight.store.schema.Declarations;
import quarterlight.store.schema.Schema;
import quarterlight.store.takeover.DatabaseTakeover;
import quarterlight.visit.row.RecordKind;

/** Takes over the database of a visit that this computer did not write, or that is not as it was written. */
final class VisitTakeover {
    private static final long MAX_MILLIS = 120_000;
    private static final long MAX_BYTES = 8L << 30;
    /** The database last, so that where its copy lies the rest lies too. */
    private static final List<String> COMPANIONS = List.of("-wal", "");

    private static final List<String> GONE =
            List.of("visit.db-wal", "visit.db-shm", "visit.db-journal", "thumbs.db", "thumbs.db-journal");

    private final VisitFolder folder;
    private final Schema schema;
    private final Instant now;

    VisitTakeover(VisitFolder folder, Schema schema, Instant now) {
        this.folder = folder;
        this.schema = schema;
        this.now = now;
    }

    /**
     * A database that was taken over.
     *
     * @param older whether it was of an older schema
     */
    record Received(Connection connection, List<String> lines, int version) {}

    /** Into memory; nothing on the disk is changed. */
    Received intoMemory(boolean alone, Optional<LogHead> kept) throws SQLException, VisitProblem {
        return into(Database.openInMemory(), alone, kept);
    }

    private Received into(Connection fresh, boolean alone, Optional<LogHead> kept) throws SQLException, VisitProblem {
        try {
            return filled(fresh, alone, kept);
        } catch (SQLException | VisitProblem | RuntimeException e) {
            fresh.close();
            throw e;
        }
    }

    private Received filled(Connection fresh, boolean alone, Optional<LogHead> kept) throws SQLException, VisitProblem {
        try (Connection suspect = Database.openSuspect(folder.database(), alone, MAX_MILLIS)) {
            requireSize();
            schema.isOlder(suspect, folder.root());
            int version = Schema.versionOf(suspect);
            if (version < 1) {
                throw new VisitUnreadable(folder.root(), say("problem.schema"), null);
            }
            Schema of = schema.at(version);
            of.apply(fresh);
            Declarations wanted = Declarations.of(of);
            DatabaseTakeover takeover = new DatabaseTakeover(
                    wanted.declared(),
                    wanted.tables(),
                    RecordKind.all().stream()
                            .<TableShape<?>>map(kind -> TableShape.of(kind))
                            .toList());
            Optional<LogHead> lost = lost(suspect, kept);
            List<String> lines = takeover.take(suspect, fresh, () -> Upgrade.apply(fresh, schema, now), lost, now);
            VisitReader.read(fresh);
            return new Received(fresh, lines, version);
        }
    }

    private void requireSize() throws VisitUnreadable {
        try {
            if (Files.size(folder.database()) > MAX_BYTES) {
                throw new VisitUnreadable(folder.root(), say("problem.longer"), null);
            }
        } catch (IOException e) {
            throw new VisitUnreadable(folder.root(), say("problem.no-database"), e);
        }
    }

    /** The end of the log that was kept, if the log does not go that far. */
    private static Optional<LogHead> lost(Connection suspect, Optional<LogHead> kept) throws SQLException {
        if (kept.isEmpty() || !LogChain.isKept(suspect) || new LogChain(suspect).holds(kept.get())) {
            return Optional.empty();
        }
        return kept;
    }

    /**
     * Puts a fresh database in the place of the one that was received, with the seal of this computer. The received one is kept beside it if
     * anything of it was left out, or if it was of an older schema.
     */
    TakeoverReport onDisk(ComputerKey key, boolean alone, Optional<LogHead> kept) throws SQLException, VisitProblem {
        try (StagingFolder unfinished = StagingFolder.in(folder.root())) {
            Path making = unfinished.folder().resolve("visit.db");
            Received received = into(Database.open(making), alone, kept);
            LogHead head;
            try (Connection fresh = received.connection()) {
                head = new LogChain(fresh).head().orElseThrow();
            }
            boolean keep = !received.lines().isEmpty() || received.version() < schema.version();
            Path aside = freeName(
                    received.version() < schema.version() ? "visit-schema-" + received.version() : "visit-received");
            exchange(making, aside, keep, unfinished);
            keepHead(key, head);
            try (Connection present = Database.openReadOnly(folder.database())) {
                OriginalNameUpgrade.replace(folder, present);
            }
            return new TakeoverReport(folder.root(), received.lines(), keep ? Optional.of(aside) : Optional.empty());
        } catch (IOException e) {
            throw new VisitUnwritable(folder.root(), "it could not be taken over (" + e.getMessage() + ")", e);
        }
    }

    /** The copy lies beside before anything of the received files goes, so that a crash at any moment loses nothing. */
    private void exchange(Path making, Path aside, boolean keep, StagingFolder unfinished) throws IOException {
        DurableFiles.force(making);
        for (String companion : COMPANIONS) {
            Path received = folder.root().resolve("visit.db" + companion);
            if (Files.exists(received)) {
                Path copy = unfinished.folder().resolve("aside.db" + companion);
                DurableFiles.fill(copy, out -> Files.copy(received, out));
                DurableFiles.move(copy, aside.resolveSibling(aside.getFileName() + companion));
            }
        }
        for (String gone : GONE) {
            Files.deleteIfExists(folder.root().resolve(gone));
        }
        DurableFiles.replace(making, folder.database());
        if (!keep) {
            for (String companion : COMPANIONS) {
                Files.deleteIfExists(aside.resolveSibling(aside.getFileName() + companion));
            }
        }
    }

    private void keepHead(ComputerKey key, LogHead head) throws IOException {
        Files.deleteIfExists(folder.head());
        try (HeadFile file = HeadFile.open(folder.head(), key)) {
            file.write(head);
            file.force();
        }
        DurableFiles.forceFolder(folder.root());
    }

    private Path freeName(String stem) {
        Path name = folder.root().resolve(stem + ".db");
        for (int n = 2; Files.exists(name); n++) {
            name = folder.root().resolve(stem + "-" + n + ".db");
        }
        return name;
    }
}
