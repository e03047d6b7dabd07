package quarterlight.store.problem;

import static quarterlight.language.Sentences.say;

import java.sql.SQLException;
import java.util.Objects;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;
import quarterlight.store.VisitStore;

/**
 * The database failed inside an edit. Carries the cause out of the edit's body to {@link VisitStore}, which makes a
 * {@link VisitProblem} of it; never leaves the package otherwise.
 */
public final class EditFailed extends RuntimeException {
    private final SQLException cause;

    public EditFailed(SQLException cause) {
        super(cause.getMessage(), cause);
        this.cause = Objects.requireNonNull(cause, "cause");
    }

    public SQLException sqlCause() {
        return cause;
    }

    /** True if the rows themselves were refused: a caller's mistake, not the disk's. */
    public static boolean isConstraint(SQLException e) {
        return primary(e) == SQLiteErrorCode.SQLITE_CONSTRAINT.code;
    }

    public static boolean isBusy(SQLException e) {
        int code = primary(e);
        return code == SQLiteErrorCode.SQLITE_BUSY.code || code == SQLiteErrorCode.SQLITE_LOCKED.code;
    }

    /** True if the disk failed, which a drive that was taken away does. */
    public static boolean isDisk(SQLException e) {
        return primary(e) == SQLiteErrorCode.SQLITE_IOERR.code;
    }

    public static boolean isDamaged(SQLException e) {
        int code = primary(e);
        return code == SQLiteErrorCode.SQLITE_CORRUPT.code || code == SQLiteErrorCode.SQLITE_NOTADB.code;
    }

    /** True if the folder or the file may not be written, or the place does not exist. */
    public static boolean isNoAccess(SQLException e) {
        int code = primary(e);
        return code == SQLiteErrorCode.SQLITE_CANTOPEN.code
                || code == SQLiteErrorCode.SQLITE_READONLY.code
                || code == SQLiteErrorCode.SQLITE_PERM.code;
    }

    /** What happened, in words that go into a sentence after a colon. */
    public static String reason(SQLException e) {
        int code = primary(e);
        if (code == SQLiteErrorCode.SQLITE_FULL.code) {
            return say("problem.full");
        }
        if (isDisk(e)) {
            return say("problem.disk", e.getMessage());
        }
        if (isBusy(e)) {
            return say("problem.busy");
        }
        if (isDamaged(e)) {
            return say("problem.damaged");
        }
        if (isNoAccess(e)) {
            return say("problem.access");
        }
        return String.valueOf(e.getMessage());
    }

    /** The result code without its extension. */
    private static int primary(SQLException e) {
        return e instanceof SQLiteException sqlite ? sqlite.getResultCode().code & 0xff : e.getErrorCode() & 0xff;
    }
}
