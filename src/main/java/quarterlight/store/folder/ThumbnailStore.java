package quarterlight.store.folder;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Objects;
import java.util.Optional;
import quarterlight.store.problem.EditFailed;
import quarterlight.store.schema.Database;
import quarterlight.visit.photo.Sha256;

/**
 * Small pictures by the hash of their original. A cache: it is made anew when it is missing or broken, kept in memory
 * where the folder cannot be written, and what it lacks is simply not there. May be used from any thread.
 */
public final class ThumbnailStore implements AutoCloseable {
    private static final System.Logger LOG = System.getLogger(ThumbnailStore.class.getName());

    private final Path file;
    private Connection connection;

    private ThumbnailStore(Path file, Connection connection) {
        this.file = file;
        this.connection = connection;
    }

    /** Opens or makes the cache of a visit; never fails for what is on the disk. */
    public static ThumbnailStore open(VisitFolder folder) {
        Path file = folder.thumbs();
        return new ThumbnailStore(file, connect(file));
    }

    private static Connection connect(Path file) {
        try {
            return prepared(file);
        } catch (SQLException first) {
            LOG.log(System.Logger.Level.INFO, "the cache of thumbnails is made anew: " + first.getMessage());
            try {
                if (EditFailed.isDamaged(first)) {
                    discard(file);
                }
                return prepared(file);
            } catch (SQLException | IOException second) {
                LOG.log(System.Logger.Level.WARNING, "thumbnails are kept in memory: " + second.getMessage());
                return inMemory();
            }
        }
    }

    private static final String SCHEMA =
            """
            CREATE TABLE IF NOT EXISTS thumbnail (
                sha256  TEXT NOT NULL,
                size_px INTEGER NOT NULL CHECK (size_px > 0),
                jpeg    BLOB NOT NULL,
                PRIMARY KEY (sha256, size_px)
            ) STRICT
            """;

    private static Connection prepared(Path file) throws SQLException {
        Connection connection = Database.open(file);
        try {
            Database.run(connection, "PRAGMA synchronous = OFF");
            Database.run(connection, SCHEMA);
            Database.ask(connection, COUNT);
            return connection;
        } catch (SQLException e) {
            connection.close();
            throw e;
        }
    }

    private static final String COUNT = "SELECT count(*) FROM thumbnail WHERE size_px = 0 AND length(jpeg) > 0";

    private static Connection inMemory() {
        try {
            Connection connection = Database.openInMemory();
            Database.run(connection, SCHEMA);
            return connection;
        } catch (SQLException e) {
            throw new IllegalStateException("no database can be kept in memory", e);
        }
    }

    private static void discard(Path file) throws IOException {
        Files.deleteIfExists(file);
        Files.deleteIfExists(file.resolveSibling(file.getFileName() + "-journal"));
    }

    private static final String GET = "SELECT jpeg FROM thumbnail WHERE sha256 = ? AND size_px = ?";

    /** The picture as it was put, or empty. */
    public synchronized Optional<byte[]> get(Sha256 sha256, int sizePx) {
        return attempt(() -> {
            try (PreparedStatement select = connection.prepareStatement(GET)) {
                select.setString(1, sha256.hex());
                select.setInt(2, sizePx);
                try (ResultSet result = select.executeQuery()) {
                    return result.next() ? Optional.of(result.getBytes(1)) : Optional.empty();
                }
            }
        });
    }

    private static final String PUT =
            """
            INSERT INTO thumbnail (sha256, size_px, jpeg) VALUES (?, ?, ?)
            ON CONFLICT (sha256, size_px) DO UPDATE SET jpeg = excluded.jpeg
            """;

    /**
     * Keeps a picture.
     *
     * @param sizePx the length of the longer side that was asked for
     */
    public synchronized void put(Sha256 sha256, int sizePx, byte[] jpeg) {
        Objects.requireNonNull(jpeg, "jpeg");
        attempt(() -> {
            try (PreparedStatement insert = connection.prepareStatement(PUT)) {
                insert.setString(1, sha256.hex());
                insert.setInt(2, sizePx);
                insert.setBytes(3, jpeg);
                insert.executeUpdate();
                return Optional.of(jpeg);
            }
        });
    }

    /** A use of the cache. */
    private interface Use {
        Optional<byte[]> run() throws SQLException;
    }

    /** The file may have been deleted or broken meanwhile: one more try with the file opened again. */
    private Optional<byte[]> attempt(Use use) {
        try {
            return use.run();
        } catch (SQLException first) {
            reopen(first);
            try {
                return use.run();
            } catch (SQLException second) {
                LOG.log(System.Logger.Level.WARNING, "a thumbnail was not kept or found", second);
                return Optional.empty();
            }
        }
    }

    private void reopen(SQLException cause) {
        close();
        try {
            if (EditFailed.isDamaged(cause)) {
                discard(file);
            }
        } catch (IOException e) {
            LOG.log(System.Logger.Level.WARNING, "the broken cache " + file + " cannot be deleted", e);
        }
        connection = connect(file);
    }

    @Override
    public synchronized void close() {
        try {
            connection.close();
        } catch (SQLException e) {
            LOG.log(System.Logger.Level.WARNING, "the cache " + file + " could not be closed in order", e);
        }
    }
}
