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
                rows(connection, RowKind.PINS),
                rows(connection, RowKind.READINGS),
                rows(connection, RowKind.GAUGE),
                rows(connection, RowKind.SIGNS),
                rows(connection, RowKind.TRACES),
                rows(connection, RowKind.MARKS),
                rows(connection, RowKind.TRIALS),
                rows(connection, RowKind.STATEMENTS),
                rows(connection, RowKind.FEATURES),
                new ClockTable(connection).all());
    }

    private static <T> List<Recorded<T>> rows(Connection connection, RowKind<T> kind) throws SQLException {
        return new RowTable<>(connection, kind.shape()).all();
    }
}
