package quarterlight.store.folder;

import java.sql.Connection;
import java.sql.SQLException;
import quarterlight.store.problem.EditFailed;
import quarterlight.store.problem.VisitLocked;
import quarterlight.store.problem.VisitUnwritable;
import quarterlight.store.schema.Database;

/**
 * Held by the one process that edits a visit; the system releases it when the process ends, however it ends.
 * <p>It is an exclusive SQLite lock on an empty file rather than a {@code FileLock}: on POSIX systems closing any channel
 * on a file drops all locks of the process on it, which SQLite guards against and a plain lock does not.
 */
public final class EditLock implements AutoCloseable {
    private static final System.Logger LOG = System.getLogger(EditLock.class.getName());

    private final Connection connection;

    private EditLock(Connection connection) {
        this.connection = connection;
    }

    /**
     * Takes the lock at once.
     *
     * @throws VisitLocked if it is taken
     * @throws VisitUnwritable if the folder cannot be written
     */
    public static EditLock take(VisitFolder folder) throws VisitLocked, VisitUnwritable {
        try {
            return new EditLock(locked(folder));
        } catch (SQLException e) {
            if (EditFailed.isBusy(e)) {
                throw new VisitLocked(folder.root(), e);
            }
            throw new VisitUnwritable(folder.root(), EditFailed.reason(e), e);
        }
    }

    private static Connection locked(VisitFolder folder) throws SQLException {
        Connection connection = Database.openAtOnce(folder.lock());
        try {
            Database.run(connection, "BEGIN EXCLUSIVE");
            return connection;
        } catch (SQLException e) {
            connection.close();
            throw e;
        }
    }

    @Override
    public void close() {
        try {
            connection.close();
        } catch (SQLException e) {
            LOG.log(System.Logger.Level.WARNING, "the lock of a visit could not be released before the end", e);
        }
    }
}
