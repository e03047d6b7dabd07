package quarterlight.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.function.Consumer;
import quarterlight.store.rows.ClockTable;
import quarterlight.store.rows.FactsTable;
import quarterlight.store.rows.PhotoTable;
import quarterlight.store.rows.RowTable;
import quarterlight.store.rows.TableShape;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.row.RecordKind;

/** Reads all that a visit holds within the present transaction, save what was kept of an earlier reading. */
public final class VisitReader {
    private VisitReader() {}

    /** Reads everything anew. */
    public static VisitRecord read(Connection connection) throws SQLException {
        return read(connection, new KeptRows(), facts -> {});
    }

    /**
     * Reads what changed since {@code kept} was filled; what did not is the same list as before.
     *
     * @param early told the facts before the rest is read
     */
    public static VisitRecord read(Connection connection, KeptRows kept, Consumer<VisitFacts> early)
            throws SQLException {
        kept.begin(connection);
        VisitFacts facts = new FactsTable(connection).read();
        early.accept(facts);
        return new VisitRecord(
                facts,
                photos(connection, kept),
                rows(connection, kept, RecordKind.PINS),
                rows(connection, kept, RecordKind.READINGS),
                rows(connection, kept, RecordKind.GAUGE),
                rows(connection, kept, RecordKind.SIGNS),
                rows(connection, kept, RecordKind.TRACES),
                rows(connection, kept, RecordKind.MARKS),
                rows(connection, kept, RecordKind.TRIALS),
                rows(connection, kept, RecordKind.STATEMENTS),
                rows(connection, kept, RecordKind.FEATURES),
                new ClockTable(connection).all(),
                rows(connection, kept, RecordKind.PHOTO_NOTES),
                rows(connection, kept, RecordKind.HIDDEN),
                rows(connection, kept, RecordKind.COVERAGE),
                rows(connection, kept, RecordKind.LEFT_OUT),
                rows(connection, kept, RecordKind.CLAIMS),
                rows(connection, kept, RecordKind.ODOMETER),
                rows(connection, kept, RecordKind.RELEASED),
                rows(connection, kept, RecordKind.DECISIONS),
                rows(connection, kept, RecordKind.DROPPED));
    }

    private static List<Photo> photos(Connection connection, KeptRows kept) throws SQLException {
        return kept.of(KeptRows.PHOTOS, () -> new PhotoTable(connection).all());
    }

    private static <T> List<Recorded<T>> rows(Connection connection, KeptRows kept, RecordKind<T> kind)
            throws SQLException {
        return kept.of(kind.table(), () -> new RowTable<>(connection, TableShape.of(kind)).all());
    }
}
