package quarterlight.store.takeover;

import static quarterlight.store.log.Names.quoted;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import quarterlight.store.rows.RowCheck;
import quarterlight.store.rows.TableShape;

/** Checks the rows in a fresh database: whether each can be read as what it is, names rows that are there, and stays within the visit. */
final class ValueCheck {
    /** A plain name directly below the folder of originals. */
    private static final Pattern STORED = Pattern.compile("originals/(?!\\.{1,2}$)[^/\\\\\\p{Cntrl}]{1,255}");

    private final Connection connection;
    private final List<TableShape<?>> shapes;
    private final TakeoverNotes slip;
    private final LeftOutRows leftOut;

    ValueCheck(Connection connection, List<TableShape<?>> shapes, TakeoverNotes slip, LeftOutRows leftOut) {
        this.connection = connection;
        this.shapes = shapes;
        this.slip = slip;
        this.leftOut = leftOut;
    }

    void run() throws SQLException {
        for (RowCheck.Fault fault : RowCheck.ofOthers(connection)) {
            leaveOut(fault.table(), fault.id(), fault.why());
        }
        storedPaths();
        for (TableShape<?> shape : shapes) {
            for (RowCheck.Fault fault : RowCheck.of(connection, shape)) {
                settle(fault);
            }
        }
        danglingRows();
        furtherPhotos();
    }

    private void settle(RowCheck.Fault fault) throws SQLException {
        if (fault.meant().isEmpty()) {
            leaveOut(fault.table(), fault.id(), fault.why());
            return;
        }
        RowCheck.Meant meant = fault.meant().get();
        try (PreparedStatement update = connection.prepareStatement(
                "UPDATE main." + quoted(fault.table()) + " SET " + quoted(meant.column()) + " = ? WHERE id = ?")) {
            update.setDouble(1, meant.value());
            update.setLong(2, fault.id());
            update.executeUpdate();
            slip.add("Row " + fault.id() + " of table " + fault.table() + ": " + fault.why()
                    + "; what was typed was taken.");
        } catch (SQLException e) {
            leaveOut(fault.table(), fault.id(), RowCopy.reason(e));
        }
    }

    private void leaveOut(String table, long id, String why) throws SQLException {
        leftOut.add(table, id, why);
        try (PreparedStatement delete =
                connection.prepareStatement("DELETE FROM main." + quoted(table) + " WHERE id = ?")) {
            delete.setLong(1, id);
            delete.executeUpdate();
        }
    }

    private static final String STORED_PATHS = "SELECT id, stored FROM photo ORDER BY id";

    private void storedPaths() throws SQLException {
        Set<String> known = new HashSet<>();
        List<Long> outside = new ArrayList<>();
        List<Long> again = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement(STORED_PATHS);
                ResultSet result = select.executeQuery()) {
            while (result.next()) {
                String stored = result.getString(2);
                if (!STORED.matcher(stored).matches()) {
                    outside.add(result.getLong(1));
                } else if (!known.add(stored)) {
                    again.add(result.getLong(1));
                }
            }
        }
        for (long id : outside) {
            leaveOut("photo", id, "its file is said to lie elsewhere than in originals/");
        }
        for (long id : again) {
            leaveOut("photo", id, "another photo has the same file");
        }
    }

    /** Taking out one row may leave another dangling, so it is asked until nothing dangles. */
    private void danglingRows() throws SQLException {
        for (List<Dangling> found = dangling(); !found.isEmpty(); found = dangling()) {
            for (Dangling row : found) {
                leaveOut(row.table(), row.id(), "it names a row of table " + row.parent() + " that is not there");
            }
        }
    }

    private record Dangling(String table, long id, String parent) {}

    private List<Dangling> dangling() throws SQLException {
        Set<Dangling> found = new HashSet<>();
        try (PreparedStatement select = connection.prepareStatement("PRAGMA foreign_key_check");
                ResultSet result = select.executeQuery()) {
            while (result.next()) {
                found.add(new Dangling(result.getString(1), result.getLong(2), result.getString(3)));
            }
        }
        return List.copyOf(found);
    }

    private static final String FURTHER = "SELECT id, more_photo_ids FROM statement WHERE more_photo_ids IS NOT NULL";

    private static final String SET_FURTHER = "UPDATE statement SET more_photo_ids = ? WHERE id = ?";

    /** Statements hold the numbers of further photos in one cell, which no foreign key guards. */
    private void furtherPhotos() throws SQLException {
        Set<String> known = new HashSet<>();
        try (PreparedStatement select = connection.prepareStatement("SELECT id FROM photo");
                ResultSet result = select.executeQuery()) {
            while (result.next()) {
                known.add(result.getString(1));
            }
        }
        List<String[]> changed = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement(FURTHER);
                ResultSet result = select.executeQuery()) {
            while (result.next()) {
                String ids = result.getString(2);
                String kept =
                        Arrays.stream(ids.split(" ")).filter(known::contains).collect(Collectors.joining(" "));
                if (!kept.equals(ids)) {
                    changed.add(new String[] {result.getString(1), kept});
                }
            }
        }
        for (String[] row : changed) {
            slip.add("Row " + row[0] + " of table statement names a photo that is not there: the name was left out.");
            try (PreparedStatement update = connection.prepareStatement(SET_FURTHER)) {
                update.setString(1, row[1].isEmpty() ? null : row[1]);
                update.setString(2, row[0]);
                update.executeUpdate();
            }
        }
    }
}
