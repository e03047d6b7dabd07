package quarterlight.store;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Consumer;
import quarterlight.store.VisitChange.Way;
import quarterlight.store.folder.DatabasePlace;
import quarterlight.store.folder.EditLock;
import quarterlight.store.folder.VisitFolder;
import quarterlight.store.log.LogChain;
import quarterlight.store.log.LogEntry;
import quarterlight.store.log.LogHead;
import quarterlight.store.log.LogTable;
import quarterlight.store.problem.EditFailed;
import quarterlight.store.problem.SchemaRefused;
import quarterlight.store.problem.VisitExists;
import quarterlight.store.problem.VisitProblem;
import quarterlight.store.problem.VisitUnreadable;
import quarterlight.store.problem.VisitUnwritable;
import quarterlight.store.schema.AllTables;
import quarterlight.store.schema.Database;
import quarterlight.visit.StoredRows;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.VisitRecord;

/**
 * An open visit. Every edit is one transaction, saved when the call returns, and one step that can be undone until the
 * visit is closed. May be used from any thread that the guard allows; calls take turns.
 */
public final class VisitStore implements AutoCloseable {
    private static final System.Logger LOG = System.getLogger(VisitStore.class.getName());

    private final VisitFolder folder;
    private final Runnable threadGuard;
    private final Connection connection;
    private final Optional<EditLock> lock;
    private final Optional<Editing> editing;
    private final OpenedDatabase opened;
    private final DatabasePlace place;
    private final ReentrantLock turn = new ReentrantLock();
    private final KeptRows kept = new KeptRows();
    /** What a drive that was taken away gives back afterward looks like a damaged file, and is none. */
    private boolean diskFailed;

    private final List<Consumer<VisitChange>> listeners = new CopyOnWriteArrayList<>();

    /** A visit open for reading has neither lock nor editing. */
    VisitStore(
            VisitFolder folder,
            Runnable threadGuard,
            Connection connection,
            Optional<EditLock> lock,
            Optional<Editing> editing,
            OpenedDatabase opened) {
        this.opened = opened;
        this.folder = folder;
        this.place = DatabasePlace.of(folder.database());
        this.threadGuard = threadGuard;
        this.connection = connection;
        this.lock = lock;
        this.editing = editing;
    }

    /**
     * Makes a visit and opens it for editing.
     *
     * @throws VisitExists if the path exists; nothing is changed
     * @throws VisitUnwritable if it cannot be made; nothing is left behind
     */
    public static VisitStore create(Path path, VisitFacts facts, Clock clock) throws VisitProblem {
        return VisitOpening.by(clock).create(path, facts);
    }

    /**
     * Opens a visit for editing, which only one process can at a time. An older schema is upgraded, with a copy of the
     * old database kept beside it.
     */
    public static VisitStore openForEditing(Path path, Clock clock) throws VisitProblem {
        return VisitOpening.by(clock).forEditing(path);
    }

    /** Opens a visit for reading, also while another process edits it, and on a medium that cannot be written. */
    public static VisitStore openForReading(Path path) throws VisitProblem {
        return VisitOpening.by(Clock.systemUTC()).forReading(path);
    }

    public VisitFolder folder() {
        return folder;
    }

    public boolean isEditable() {
        return editing.isPresent();
    }

    /** All that the visit holds at this moment. Lists that did not change are the same lists as at the last reading. */
    public VisitRecord read() throws VisitUnreadable {
        return read(facts -> {});
    }

    /**
     * The same.
     *
     * @param early told what the visit says of itself and its car as soon as that is read, before photos and the rest
     */
    public VisitRecord read(Consumer<VisitFacts> early) throws VisitUnreadable {
        return query(c -> VisitReader.read(c, kept, early));
    }

    /** What changed when, oldest first. */
    public List<LogEntry> editLog() throws VisitUnreadable {
        return query(c -> new LogTable(c).all());
    }

    /** The end of the edit log, which stands for all of it: its number and its hash. Empty if it is no chain. */
    public Optional<String> logHead() throws VisitUnreadable {
        return query(c -> new LogChain(c).head().map(LogHead::toString));
    }

    /** How the database came to be open. */
    OpenedDatabase opened() {
        return opened;
    }

    /** Every table as it is kept, cell by cell, in alphabetical order: for archives and other programs. */
    public List<StoredRows> tables() throws VisitUnreadable {
        return query(AllTables::read);
    }

    /** A question to the database. */
    public interface Query<T> {
        T ask(Connection connection) throws SQLException;
    }

    /** Answers a question from one state of the database. */
    public <T> T query(Query<T> query) throws VisitUnreadable {
        take();
        try {
            Database.run(connection, "BEGIN");
            try {
                return query.ask(connection);
            } finally {
                Database.run(connection, "ROLLBACK");
            }
        } catch (SQLException e) {
            throw unreadable(e);
        } finally {
            turn.unlock();
        }
    }

    /**
     * Writes a whole copy of the database as it stands, without the files that SQLite keeps beside one in use.
     *
     * @param target a file that does not exist
     */
    public void copyDatabase(Path target) throws VisitUnwritable {
        take();
        try {
            Database.copy(connection, target);
        } catch (SQLException e) {
            throw new VisitUnwritable(folder.root(), "no copy could be made at " + target, e);
        } finally {
            turn.unlock();
        }
    }

    /**
     * Does an edit as one transaction and one undo step, and saves it. If the body throws, or changes nothing, nothing
     * is kept and there is no step.
     *
     * @param label what the user did, for undo and for the edit log: {@code pin DSC_0231.JPG to hood}
     * @throws VisitUnwritable if it cannot be saved; the visit stands as before
     * @throws SchemaRefused if the schema refuses a row
     */
    public <T> T edit(String label, Edit<T> body) throws VisitUnwritable {
        return edit(label, Optional.empty(), body);
    }

    /** An edit that joins the step before it if that belongs to the same group; the step takes the new label. */
    public <T> T edit(String label, EditGroup group, Edit<T> body) throws VisitUnwritable {
        return edit(label, Optional.of(group), body);
    }

    /** An edit without a result. */
    public void change(String label, Consumer<VisitTx> body) throws VisitUnwritable {
        edit(label, Optional.empty(), tx -> {
            body.accept(tx);
            return label;
        });
    }

    private <T> T edit(String label, Optional<EditGroup> group, Edit<T> body) throws VisitUnwritable {
        Objects.requireNonNull(label, "label");
        Editing.Outcome<T> outcome = write(e -> e.edit(label, group, body));
        if (outcome.changed()) {
            tell(new VisitChange(Way.EDIT, label));
        }
        return outcome.result();
    }

    /** Takes the last step back; its label, or empty if there is none. */
    public Optional<String> undo() throws VisitUnwritable {
        Optional<String> label = write(Editing::undo);
        label.ifPresent(text -> tell(new VisitChange(Way.UNDO, text)));
        return label;
    }

    /** Does the step that was last taken back again; its label, or empty if there is none. */
    public Optional<String> redo() throws VisitUnwritable {
        Optional<String> label = write(Editing::redo);
        label.ifPresent(text -> tell(new VisitChange(Way.REDO, text)));
        return label;
    }

    /** The label of the step that {@link #undo} would take back. May be asked on any thread. */
    public Optional<String> undoLabel() {
        turn.lock();
        try {
            return editing.flatMap(Editing::undoLabel);
        } finally {
            turn.unlock();
        }
    }

    /** The label of the step that {@link #redo} would do again. May be asked on any thread. */
    public Optional<String> redoLabel() {
        turn.lock();
        try {
            return editing.flatMap(Editing::redoLabel);
        } finally {
            turn.unlock();
        }
    }

    /** Something that writes. */
    private interface Writing<T> {
        T run(Editing editing) throws SQLException;
    }

    private <T> T write(Writing<T> writing) throws VisitUnwritable {
        Editing open = editing.orElseThrow(() -> new IllegalStateException("the visit is open for reading only"));
        take();
        try {
            requireThere();
            T outcome = writing.run(open);
            kept.forget(open.takeTouched());
            requireThere();
            return outcome;
        } catch (SQLException e) {
            throw refused(e);
        } catch (EditFailed e) {
            throw refused(e.sqlCause());
        } finally {
            turn.unlock();
        }
    }

    /** A system may go on writing to a file that is deleted or moved; what was saved there would be lost without a word. */
    private void requireThere() throws VisitUnwritable {
        if (!place.isThere()) {
            throw VisitUnwritable.gone(folder.root());
        }
    }

    private VisitUnreadable unreadable(SQLException e) {
        if (!place.isThere()) {
            return VisitUnreadable.gone(folder.root(), e);
        }
        return isSilent(e)
                ? VisitUnreadable.noAnswer(folder.root(), e)
                : new VisitUnreadable(folder.root(), EditFailed.reason(e), e);
    }

    private boolean isSilent(SQLException e) {
        diskFailed |= EditFailed.isDisk(e);
        return EditFailed.isDisk(e) || diskFailed && (EditFailed.isDamaged(e) || EditFailed.isNoAccess(e));
    }

    private VisitUnwritable refused(SQLException e) {
        if (!place.isThere()) {
            return VisitUnwritable.gone(folder.root());
        }
        if (isSilent(e)) {
            return VisitUnwritable.noAnswer(folder.root(), e);
        }
        if (EditFailed.isConstraint(e)) {
            throw new SchemaRefused(e);
        }
        return new VisitUnwritable(folder.root(), EditFailed.reason(e), e);
    }

    private void take() {
        threadGuard.run();
        if (turn.isHeldByCurrentThread()) {
            throw new IllegalStateException("an edit or a question stands within another; use the VisitTx at hand");
        }
        turn.lock();
    }

    /** A registered listener. */
    public interface Registration extends AutoCloseable {
        @Override
        void close();
    }

    /** Tells the listener of every change after it is saved, on the thread that made it, until the result is closed. */
    public Registration onChange(Consumer<VisitChange> listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }

    private void tell(VisitChange change) {
        listeners.forEach(listener -> listener.accept(change));
    }

    /** Leaves the visit as one plain file if nobody else has it open, and lets others edit it. */
    @Override
    public void close() {
        turn.lock();
        try {
            if (editing.isPresent() && !connection.isClosed()) {
                VisitOpening.settle(connection);
            }
            connection.close();
        } catch (SQLException e) {
            LOG.log(System.Logger.Level.WARNING, "the visit " + folder.root() + " could not be closed in order", e);
        } finally {
            editing.ifPresent(Editing::close);
            lock.ifPresent(EditLock::close);
            turn.unlock();
        }
    }
}
