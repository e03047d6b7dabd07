package quarterlight.store.rows;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quarterlight.car.Substrate;

/** Tries every row of a table by itself, so that one that cannot be read is named and the rest is kept. */
public final class RowCheck {
    /** The share by which two ways of working out one number may differ. */
    private static final double SAME = 1e-9;

    private static final int MAX_REASON = 200;

    private final Connection connection;
    private final List<Fault> faults = new ArrayList<>();

    private RowCheck(Connection connection) {
        this.connection = connection;
    }

    /**
     * A row that is not what it should be.
     *
     * @param why half a sentence
     * @param meant the column and the number that the typed text of the row gives, if that is all that is wrong
     */
    public record Fault(String table, long id, String why, Optional<Meant> meant) {}

    /** A number as the text typed beside it gives it. */
    public record Meant(String column, double value) {}

    /** The faults of the rows of one kind. */
    public static <T> List<Fault> of(Connection connection, TableShape<T> shape) throws SQLException {
        RowCheck check = new RowCheck(connection);
        check.each(shape.table(), shape.select(), row -> {
            T value = shape.read().read(row);
            return check.differing(shape, shape.write().apply(value), row);
        });
        return check.faults;
    }

    /** The faults of the photos, of the substrates of zones, of the clocks and of the times of the edit log. */
    public static List<Fault> ofOthers(Connection connection) throws SQLException {
        List<Fault> found = new ArrayList<>(of(connection, PhotoTable.FILES));
        RowCheck check = new RowCheck(connection);
        check.each("zone_substrate", "SELECT id, zone, substrate FROM zone_substrate", row -> {
            row.zone("zone");
            row.word(Substrate.class, "substrate");
            return Optional.empty();
        });
        check.each("clock_setting", "SELECT id, camera, shift_duration, timezone FROM clock_setting", row -> {
            ClockTable.read(row);
            return Optional.empty();
        });
        check.each("edit_log", "SELECT id, at FROM edit_log", row -> {
            Instant.parse(row.text("at"));
            return Optional.empty();
        });
        found.addAll(check.faults);
        return found;
    }

    private interface Trying {
        Optional<Fault> read(Row row) throws SQLException;
    }

    /** A row from outside may break a reader in any way; whatever it is, the row is named and not used. */
    private void each(String table, String select, Trying trying) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(select);
                ResultSet result = statement.executeQuery()) {
            Row row = new Row(result);
            while (result.next()) {
                long id = result.getLong("id");
                try {
                    trying.read(row).ifPresent(faults::add);
                } catch (SQLException | RuntimeException e) {
                    faults.add(new Fault(table, id, reason(e), Optional.empty()));
                }
            }
        }
    }

    private static String reason(Exception e) {
        String said = e.getMessage() == null
                ? "it cannot be read"
                : e.getMessage().replaceAll("\\p{Cntrl}+", " ").strip();
        return said.length() <= MAX_REASON ? said : said.substring(0, MAX_REASON) + "…";
    }

    /** The first number that is another than the value read of the row would be written as. */
    private <T> Optional<Fault> differing(TableShape<T> shape, RowValues cells, Row row) throws SQLException {
        for (int i = 0; i < shape.columns().size(); i++) {
            String column = shape.columns().get(i);
            if (cells.at(i) instanceof Double meant) {
                double stored = row.real(column);
                if (Math.abs(stored - meant) > SAME * Math.max(1, Math.abs(meant))) {
                    String why = column + " is " + stored + ", and what was typed gives " + meant;
                    return Optional.of(
                            new Fault(shape.table(), row.id().value(), why, Optional.of(new Meant(column, meant))));
                }
            }
        }
        return Optional.empty();
    }
}
