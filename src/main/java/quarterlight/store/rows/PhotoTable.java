package quarterlight.store.rows;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.OptionalDouble;
import quarterlight.visit.photo.CameraId;
import quarterlight.visit.photo.CaptureSource;
import quarterlight.visit.photo.CaptureTime;
import quarterlight.visit.photo.MediaHeader;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.photo.Position;
import quarterlight.visit.photo.Sha256;
import quarterlight.visit.pin.RecordId;

/** Photos and films with what intake remarked on each of them. */
public final class PhotoTable {
    static final TableShape<PhotoFile> FILES = TableShape.of(
            "photo",
            "name, stored, sha256, bytes, kind, type, captured_time, captured_fraction, captured_offset,"
                    + " captured_source, captured_suspect, gps_utc, latitude_deg, longitude_deg, camera, width_px,"
                    + " height_px, orientation, film_s, sharpness, content_id, pages, beside, caption, keywords, rating,"
                    + " turned, focal_35_mm",
            PhotoTable::write,
            row -> read(row, List.of()));

    private final Connection connection;
    private final RowTable<PhotoFile> files;

    public PhotoTable(Connection connection) {
        this.connection = connection;
        this.files = new RowTable<>(connection, FILES);
    }

    public PhotoId add(PhotoFile file) throws SQLException {
        PhotoId id = new PhotoId(files.addAll(List.of(file)).get(0).value());
        addRemarks(id, file.notes());
        return id;
    }

    /** @throws NoSuchElementException if there is no such photo */
    public void update(PhotoId id, PhotoFile file) throws SQLException {
        files.update(new RecordId(id.value()), file);
        if (!remarks().getOrDefault(id, List.of()).equals(file.notes())) {
            removeRemarks(id);
            addRemarks(id, file.notes());
        }
    }

    private static final String FIND = "SELECT id FROM photo WHERE sha256 = ?";

    public Optional<PhotoId> find(Sha256 sha256) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement(FIND)) {
            select.setString(1, sha256.hex());
            try (ResultSet result = select.executeQuery()) {
                return result.next() ? Optional.of(new PhotoId(result.getLong(1))) : Optional.empty();
            }
        }
    }

    private static final String SET_ASIDE = "UPDATE photo SET set_aside = ? WHERE id = ?";

    /** @throws NoSuchElementException if there is no such photo */
    public void setAside(PhotoId id, Optional<String> reason) throws SQLException {
        change(SET_ASIDE, id, new RowValues().textOf(reason));
    }

    private static final String SET_SHARPNESS = "UPDATE photo SET sharpness = ? WHERE id = ?";

    /** @throws NoSuchElementException if there is no such photo */
    public void setSharpness(PhotoId id, OptionalDouble sharpness) throws SQLException {
        change(SET_SHARPNESS, id, new RowValues().real(sharpness));
    }

    private void change(String sql, PhotoId id, RowValues cells) throws SQLException {
        try (PreparedStatement update = connection.prepareStatement(sql)) {
            cells.integer(id.value()).bind(update);
            if (update.executeUpdate() != 1) {
                throw new NoSuchElementException("the visit has no photo " + id);
            }
        }
    }

    private static final String ALL =
            """
            SELECT id, name, stored, sha256, bytes, kind, type, captured_time, captured_fraction, captured_offset,
                   captured_source, captured_suspect, gps_utc, latitude_deg, longitude_deg, camera, width_px,
                   height_px, orientation, film_s, sharpness, content_id, pages, beside, caption, keywords, rating,
                   turned, focal_35_mm, set_aside
            FROM photo ORDER BY id
            """;

    /** Every photo in the order of intake. */
    public List<Photo> all() throws SQLException {
        Map<PhotoId, List<String>> remarks = remarks();
        List<Photo> found = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement(ALL);
                ResultSet result = select.executeQuery()) {
            Row row = new Row(result);
            while (result.next()) {
                found.add(photo(row, remarks));
            }
        }
        return List.copyOf(found);
    }

    private static Photo photo(Row row, Map<PhotoId, List<String>> remarks) throws SQLException {
        PhotoId id = row.photo("id");
        try {
            return new Photo(id, read(row, remarks.getOrDefault(id, List.of())), row.someText("set_aside"));
        } catch (SQLException | IllegalArgumentException | DateTimeException e) {
            throw new SQLException("row " + id + " of table photo: " + e.getMessage(), e);
        }
    }

    private static final String REMARKS = "SELECT photo_id, remark FROM intake_remark ORDER BY photo_id, ordinal";

    private Map<PhotoId, List<String>> remarks() throws SQLException {
        Map<PhotoId, List<String>> found = new HashMap<>();
        try (PreparedStatement select = connection.prepareStatement(REMARKS);
                ResultSet result = select.executeQuery()) {
            while (result.next()) {
                found.computeIfAbsent(new PhotoId(result.getLong(1)), id -> new ArrayList<>())
                        .add(result.getString(2));
            }
        }
        return found;
    }

    private static final String ADD_REMARK = "INSERT INTO intake_remark (photo_id, ordinal, remark) VALUES (?, ?, ?)";

    private void addRemarks(PhotoId id, List<String> remarks) throws SQLException {
        try (PreparedStatement insert = connection.prepareStatement(ADD_REMARK)) {
            for (int i = 0; i < remarks.size(); i++) {
                new RowValues()
                        .integer(id.value())
                        .integer(i)
                        .text(remarks.get(i))
                        .bind(insert);
                insert.executeUpdate();
            }
        }
    }

    private static final String REMOVE_REMARKS = "DELETE FROM intake_remark WHERE photo_id = ?";

    private void removeRemarks(PhotoId id) throws SQLException {
        try (PreparedStatement delete = connection.prepareStatement(REMOVE_REMARKS)) {
            delete.setLong(1, id.value());
            delete.executeUpdate();
        }
    }

    private static RowValues write(PhotoFile file) {
        RowValues cells = new RowValues()
                .text(file.name())
                .text(file.stored())
                .text(file.sha256().hex())
                .integer(file.bytes())
                .word(file.kind())
                .text(file.type());
        captured(cells, file.captured());
        cells.textOf(file.gpsUtc())
                .real(file.position().map(p -> OptionalDouble.of(p.latitude())).orElseGet(OptionalDouble::empty))
                .real(file.position().map(p -> OptionalDouble.of(p.longitude())).orElseGet(OptionalDouble::empty))
                .textOf(file.camera())
                .integer(file.width())
                .integer(file.height())
                .integer(file.orientation())
                .real(file.seconds())
                .real(file.sharpness())
                .textOf(file.contentId());
        return MediaCells.write(cells, file.more());
    }

    private static void captured(RowValues cells, Optional<CaptureTime> captured) {
        captured.ifPresentOrElse(
                time -> cells.textOf(time.time())
                        .text(time.fraction())
                        .textOf(time.offset())
                        .word(time.source())
                        .flag(time.suspect()),
                () -> cells.none().none().none().none().none());
    }

    private static PhotoFile read(Row row, List<String> notes) throws SQLException {
        return new PhotoFile(
                row.text("name"),
                row.text("stored"),
                new Sha256(row.text("sha256")),
                row.integer("bytes"),
                row.word(MediaKind.class, "kind"),
                row.text("type"),
                new MediaHeader(
                        captured(row),
                        row.someTime("gps_utc"),
                        position(row),
                        row.someText("camera").map(CameraId::new),
                        row.someInteger("width_px"),
                        row.someInteger("height_px"),
                        (int) row.integer("orientation"),
                        row.someReal("film_s"),
                        row.someText("content_id")),
                row.someReal("sharpness"),
                notes,
                MediaCells.read(row));
    }

    private static Optional<CaptureTime> captured(Row row) throws SQLException {
        var time = row.someTime("captured_time");
        if (time.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new CaptureTime(
                time.get(),
                row.text("captured_fraction"),
                row.someText("captured_offset").map(ZoneOffset::of),
                row.word(CaptureSource.class, "captured_source"),
                row.integer("captured_suspect") != 0));
    }

    private static Optional<Position> position(Row row) throws SQLException {
        return row.someReal("latitude_deg").isPresent()
                ? Optional.of(new Position(row.real("latitude_deg"), row.real("longitude_deg")))
                : Optional.empty();
    }
}
