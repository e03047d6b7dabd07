package quarterlight.store.rows;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import quarterlight.visit.photo.CameraId;
import quarterlight.visit.photo.ClockSetting;

/** How the clocks of the cameras were set right; one row a camera. */
public final class ClockTable {
    private final Connection connection;

    public ClockTable(Connection connection) {
        this.connection = connection;
    }

    private static final String SET =
            """
            INSERT INTO clock_setting (camera, shift_duration, timezone) VALUES (?, ?, ?)
            ON CONFLICT (camera) DO UPDATE SET shift_duration = excluded.shift_duration, timezone = excluded.timezone
            """;

    public void set(ClockSetting setting) throws SQLException {
        try (PreparedStatement upsert = connection.prepareStatement(SET)) {
            new RowValues()
                    .textOf(setting.camera())
                    .textOf(setting.shift())
                    .textOf(setting.zone().map(ZoneId::getId))
                    .bind(upsert);
            upsert.executeUpdate();
        }
    }

    private static final String REMOVE = "DELETE FROM clock_setting WHERE camera = ?";

    /** Takes the camera's clock as it was; nothing happens if it was never set. */
    public void remove(CameraId camera) throws SQLException {
        try (PreparedStatement delete = connection.prepareStatement(REMOVE)) {
            delete.setString(1, camera.value());
            delete.executeUpdate();
        }
    }

    private static final String ALL = "SELECT camera, shift_duration, timezone FROM clock_setting ORDER BY camera";

    public List<ClockSetting> all() throws SQLException {
        List<ClockSetting> found = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement(ALL);
                ResultSet result = select.executeQuery()) {
            Row row = new Row(result);
            while (result.next()) {
                found.add(read(row));
            }
        } catch (IllegalArgumentException | DateTimeException e) {
            throw new SQLException("table clock_setting: " + e.getMessage(), e);
        }
        return List.copyOf(found);
    }

    static ClockSetting read(Row row) throws SQLException {
        return new ClockSetting(
                new CameraId(row.text("camera")),
                Duration.parse(row.text("shift_duration")),
                row.someText("timezone").map(ZoneId::of));
    }
}
