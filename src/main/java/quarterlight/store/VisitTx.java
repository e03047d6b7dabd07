package quarterlight.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import quarterlight.store.problem.EditFailed;
import quarterlight.store.problem.SchemaRefused;
import quarterlight.store.rows.ClockTable;
import quarterlight.store.rows.FactsTable;
import quarterlight.store.rows.PhotoTable;
import quarterlight.store.rows.RowTable;
import quarterlight.store.rows.TableShape;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.CameraId;
import quarterlight.visit.photo.ClockSetting;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.photo.Sha256;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.row.RecordKind;

/**
 * What can be changed within one edit. Valid only while the edit's body runs, on its thread. A row that the schema
 * refuses (a photo that is not there, a number out of range) ends the edit with {@link SchemaRefused}.
 */
public final class VisitTx {
    private final Connection connection;
    private boolean open = true;

    VisitTx(Connection connection) {
        this.connection = connection;
    }

    /** A statement of the database. */
    private interface Work<T> {
        T run() throws SQLException;
    }

    /** A statement of the database without a result. */
    private interface Step {
        void run() throws SQLException;
    }

    /** The visit as it stands within this edit. */
    public VisitRecord read() {
        return ask(() -> VisitReader.read(connection));
    }

    /** The facts as they stand within this edit. */
    public VisitFacts facts() {
        return ask(() -> new FactsTable(connection).read());
    }

    public void setFacts(VisitFacts facts) {
        Objects.requireNonNull(facts, "facts");
        tell(() -> new FactsTable(connection).set(facts));
    }

    /** Adds a photo or film whose file lies in the originals; its hash must be new to the visit. */
    public PhotoId addPhoto(PhotoFile file) {
        Objects.requireNonNull(file, "file");
        return ask(() -> new PhotoTable(connection).add(file));
    }

    public Optional<PhotoId> findPhoto(Sha256 sha256) {
        return ask(() -> new PhotoTable(connection).find(sha256));
    }

    /**
     * Replaces what is known of a photo's file, when it was read again by a later version.
     *
     * @throws NoSuchElementException if there is no such photo
     */
    public void updatePhoto(PhotoId id, PhotoFile file) {
        tell(() -> new PhotoTable(connection).update(id, file));
    }

    /**
     * Puts a photo aside for a reason, or takes it back in if the reason is empty.
     *
     * @throws NoSuchElementException if there is no such photo
     */
    public void setAside(PhotoId id, Optional<String> reason) {
        tell(() -> new PhotoTable(connection).setAside(id, reason));
    }

    /** @throws NoSuchElementException if there is no such photo */
    public void setSharpness(PhotoId id, OptionalDouble sharpness) {
        tell(() -> new PhotoTable(connection).setSharpness(id, sharpness));
    }

    public <T> RecordId add(RecordKind<T> kind, T value) {
        return addAll(kind, List.of(value)).get(0);
    }

    /** Adds rows in order; their numbers in the same order. */
    public <T> List<RecordId> addAll(RecordKind<T> kind, List<T> values) {
        return ask(() -> new RowTable<>(connection, TableShape.of(kind)).addAll(values));
    }

    /** @throws NoSuchElementException if there is no such row */
    public <T> void update(RecordKind<T> kind, RecordId id, T value) {
        Objects.requireNonNull(value, "value");
        tell(() -> new RowTable<>(connection, TableShape.of(kind)).update(id, value));
    }

    /** @throws NoSuchElementException if there is no such row */
    public void remove(RecordKind<?> kind, RecordId id) {
        tell(() -> new RowTable<>(connection, TableShape.of(kind)).remove(id));
    }

    /** Sets a camera's clock, in place of what was set before. */
    public void setClock(ClockSetting setting) {
        tell(() -> new ClockTable(connection).set(setting));
    }

    /** Takes a camera's clock as it recorded. */
    public void removeClock(CameraId camera) {
        tell(() -> new ClockTable(connection).remove(camera));
    }

    void end() {
        open = false;
    }

    private <T> T ask(Work<T> work) {
        if (!open) {
            throw new IllegalStateException("this edit has ended");
        }
        try {
            return work.run();
        } catch (SQLException e) {
            throw new EditFailed(e);
        }
    }

    private void tell(Step step) {
        ask(() -> {
            step.run();
            return Optional.empty();
        });
    }
}
