package quarterlight.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import quarterlight.store.rows.ClockTable;
import quarterlight.store.rows.FactsTable;
import quarterlight.store.rows.PhotoTable;
import quarterlight.store.rows.RowTable;
import quarterlight.visit.Recorded;
import quarterlight.visit.VisitRecord;

/** Reads all that a visit holds within the present transaction. */
final class VisitReader {
    private VisitReader() {}

    static VisitRecord read(Connection connection) throws SQLException {
        return new VisitRecord(
                new FactsTable(connection).read(),
                new PhotoTable(connection).all(),
                rows(connection, RecordKind.PINS),
                rows(connection, RecordKind.READINGS),
                rows(connection, RecordKind.GAUGE),
                rows(connection, RecordKind.SIGNS),
                rows(connection, RecordKind.TRACES),
                rows(connection, RecordKind.MARKS),
                rows(connection, RecordKind.TRIALS),
                rows(connection, RecordKind.STATEMENTS),
                rows(connection, RecordKind.FEATURES),
                new ClockTable(connection).all(),
                rows(connection, RecordKind.PHOTO_NOTES),
                rows(connection, RecordKind.HIDDEN),
                rows(connection, RecordKind.COVERAGE),
                rows(connection, RecordKind.LEFT_OUT));
    }

    private static <T> List<Recorded<T>> rows(Connection connection, RecordKind<T> kind) throws SQLException {
        return new RowTable<>(connection, kind.shape()).all();
    }
}
