package quarterlight.store;

import static quarterlight.language.Sentences.say;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import quarterlight.store.log.LogChain;
import quarterlight.store.log.LogHead;
import quarterlight.store.log.LogReplay;
import quarterlight.store.problem.VisitUnreadable;
import quarterlight.store.rows.RowCheck;
import quarterlight.store.rows.TableShape;
import quarterlight.store.schema.UndoJournal;
import quarterlight.visit.row.RecordKind;

/** Checks the database of a visit against itself. */
public final class StoreAudit {
    private static final String SOUND = "ok";

    private StoreAudit() {}

    /**
     * What does not hold, one sentence each: pages and indexes that do not agree, rows that name a row which is not
     * there, cells that cannot be what they are. Empty if all holds.
     */
    public static List<String> of(VisitStore store) {
        List<String> found = new ArrayList<>();
        found.addAll(store.opened().leftOut());
        store.opened().headFault().ifPresent(found::add);
        try {
            found.addAll(store.query(StoreAudit::check));
            store.read();
        } catch (VisitUnreadable e) {
            found.add(e.getMessage());
        }
        return List.copyOf(found);
    }

    /**
     * Whether the edit log ends as somebody was told that it does.
     *
     * @param told number and hash of the last entry, as {@link VisitStore#logHead} gave it
     */
    public static Optional<String> ofHead(VisitStore store, String told) throws VisitUnreadable {
        String[] parts = told.strip().split(" ");
        boolean holds = parts.length == 2
                && parts[0].matches("\\d{1,15}")
                && store.query(c -> new LogChain(c).holds(new LogHead(Long.parseLong(parts[0]), parts[1])));
        return holds ? Optional.empty() : Optional.of(say("audit.head", told.replaceAll("\\p{C}+", " ")));
    }

    private static List<String> check(Connection connection) throws SQLException {
        List<String> found = new ArrayList<>();
        try (Statement statement = connection.createStatement();
                ResultSet result = statement.executeQuery("PRAGMA integrity_check")) {
            while (result.next()) {
                String line = result.getString(1);
                if (!line.equals(SOUND)) {
                    found.add(say("audit.integrity", line));
                }
            }
        }
        try (Statement statement = connection.createStatement();
                ResultSet result = statement.executeQuery("PRAGMA foreign_key_check")) {
            while (result.next()) {
                found.add(say("audit.foreign", result.getLong(2), result.getString(1), result.getString(3)));
            }
        }
        found.addAll(unknownPhotos(connection));
        found.addAll(sameFiles(connection));
        for (RecordKind<?> kind : RecordKind.all()) {
            for (RowCheck.Fault fault : RowCheck.of(connection, TableShape.of(kind))) {
                found.add(say("audit.row", fault.id(), fault.table(), fault.why()));
            }
        }
        found.addAll(LogReplay.of(connection).faults(UndoJournal.tables(connection)));
        return found;
    }

    private static final String SAME_FILES =
            "SELECT stored, group_concat(id, ', ') FROM photo GROUP BY stored HAVING count(*) > 1 ORDER BY stored";

    private static List<String> sameFiles(Connection connection) throws SQLException {
        List<String> found = new ArrayList<>();
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(SAME_FILES)) {
            while (rows.next()) {
                found.add(say("audit.same-file", rows.getString(2), rows.getString(1)));
            }
        }
        return found;
    }

    /** Statements hold the numbers of further photos in one cell, which no foreign key guards. */
    private static List<String> unknownPhotos(Connection connection) throws SQLException {
        List<String> found = new ArrayList<>();
        Set<String> known = new HashSet<>();
        try (Statement statement = connection.createStatement();
                ResultSet photos = statement.executeQuery("SELECT id FROM photo")) {
            while (photos.next()) {
                known.add(photos.getString(1));
            }
        }
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(
                        "SELECT id, more_photo_ids FROM statement WHERE more_photo_ids IS NOT NULL")) {
            while (rows.next()) {
                if (!known.containsAll(List.of(rows.getString(2).split(" ")))) {
                    found.add(say("audit.photo", rows.getLong(1)));
                }
            }
        }
        return found;
    }
}
