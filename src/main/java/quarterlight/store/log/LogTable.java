package quarterlight.store.log;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import quarterlight.store.rows.Row;
import quarterlight.store.rows.RowValues;

/** The edit log: what changed when. Rows are only ever added. */
public final class LogTable {
    private final Connection connection;

    public LogTable(Connection connection) {
        this.connection = connection;
    }

    private static final String ADD = "INSERT INTO edit_log (at, label, summary) VALUES (?, ?, ?)";

    public void add(LogEntry line) throws SQLException {
        try (PreparedStatement insert = connection.prepareStatement(ADD)) {
            new RowValues()
                    .textOf(line.at())
                    .text(line.label())
                    .text(line.summary())
                    .bind(insert);
            insert.executeUpdate();
        }
    }

    private static final String ALL = "SELECT at, label, summary FROM edit_log ORDER BY id";

    public List<LogEntry> all() throws SQLException {
        List<LogEntry> found = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement(ALL);
                ResultSet result = select.executeQuery()) {
            Row row = new Row(result);
            while (result.next()) {
                found.add(new LogEntry(Instant.parse(row.text("at")), row.text("label"), row.text("summary")));
            }
        } catch (DateTimeException e) {
            throw new SQLException("table edit_log: " + e.getMessage(), e);
        }
        return List.copyOf(found);
    }
}
