package quarterlight.store.rows;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.util.ArrayList;
import java.util.List;
import java.util.NoSuchElementException;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;

/** The rows of one kind: added, changed, removed and read by their shape. Holds no state of its own. */
public final class RowTable<T> {
    private final Connection connection;
    private final TableShape<T> shape;

    public RowTable(Connection connection, TableShape<T> shape) {
        this.connection = connection;
        this.shape = shape;
    }

    /** Adds rows in order; their new numbers in the same order. */
    public List<RecordId> addAll(List<T> values) throws SQLException {
        List<RecordId> ids = new ArrayList<>();
        try (PreparedStatement insert = connection.prepareStatement(shape.insert());
                GeneratedKeys keys = new GeneratedKeys(connection)) {
            for (T value : values) {
                shape.write().apply(value).bind(insert);
                insert.executeUpdate();
                ids.add(new RecordId(keys.last()));
            }
        }
        return List.copyOf(ids);
    }

    /** @throws NoSuchElementException if no row has the number */
    public void update(RecordId id, T value) throws SQLException {
        try (PreparedStatement update = connection.prepareStatement(shape.update())) {
            shape.write().apply(value).integer(id.value()).bind(update);
            requireOne(update.executeUpdate(), id);
        }
    }

    /** @throws NoSuchElementException if no row has the number */
    public void remove(RecordId id) throws SQLException {
        try (PreparedStatement delete = connection.prepareStatement(shape.delete())) {
            delete.setLong(1, id.value());
            requireOne(delete.executeUpdate(), id);
        }
    }

    /** Every row in the order in which they were added. */
    public List<Recorded<T>> all() throws SQLException {
        List<Recorded<T>> found = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement(shape.select());
                ResultSet result = select.executeQuery()) {
            Row row = new Row(result);
            while (result.next()) {
                found.add(new Recorded<>(row.id(), read(row)));
            }
        }
        return List.copyOf(found);
    }

    private T read(Row row) throws SQLException {
        try {
            return shape.read().read(row);
        } catch (SQLException | IllegalArgumentException | DateTimeException e) {
            throw new SQLException("row " + row.id() + " of table " + shape.table() + ": " + e.getMessage(), e);
        }
    }

    private void requireOne(int changed, RecordId id) {
        if (changed != 1) {
            throw new NoSuchElementException("table " + shape.table() + " has no row " + id);
        }
    }
}
