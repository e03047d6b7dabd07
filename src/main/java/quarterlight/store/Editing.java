package quarterlight.store;

import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import quarterlight.store.log.HeadFile;
import quarterlight.store.log.LogChain;
import quarterlight.store.log.LogHead;
import quarterlight.store.schema.Database;
import quarterlight.store.schema.UndoJournal;

/**
 * Edits as transactions, and the steps they make for undo and redo. What it remembers changes only after a transaction
 * was committed. The store sees to it that calls take turns.
 */
public final class Editing implements AutoCloseable {
    private static final System.Logger LOG = System.getLogger(Editing.class.getName());

    private final Connection connection;
    private final UndoJournal journal;
    private final LogChain log;
    private final HeadFile headFile;
    private final Clock clock;
    private Optional<LogHead> head;
    private Optional<LogHead> coming = Optional.empty();
    private final Deque<Step> undo = new ArrayDeque<>();
    private final Deque<Step> redo = new ArrayDeque<>();
    private final Set<String> touched = new HashSet<>();

    /**
     * One labelled step.
     *
     * @param first number of its first entry in the journal
     * @param last number of its last entry
     */
    private record Step(String label, long first, long last, Optional<EditGroup> group) {}

    /** What an edit returned, and whether it changed anything. */
    public record Outcome<T>(T result, boolean changed) {}

    /** What is done between the beginning and the commit; a false answer takes it back. */
    private interface Work {
        boolean run() throws SQLException;
    }

    /** @param headFile written after each commit, closed with this */
    Editing(Connection connection, UndoJournal journal, Clock clock, HeadFile headFile) throws SQLException {
        this.connection = connection;
        this.journal = journal;
        this.log = new LogChain(connection);
        this.clock = clock;
        this.headFile = headFile;
        this.head = log.head();
    }

    <T> Outcome<T> edit(String label, Optional<EditGroup> group, Edit<T> body) throws SQLException {
        Body<T> run = new Body<>(label, body);
        boolean changed = transaction(run);
        if (changed) {
            redo.clear();
            pushJoining(new Step(label, run.before + 1, run.last, group));
        }
        return new Outcome<>(run.result.orElseThrow(), changed);
    }

    /** The body of an edit between the entries of the journal before and after it. */
    private final class Body<T> implements Work {
        private final String label;
        private final Edit<T> body;
        private Optional<T> result = Optional.empty();
        private long before;
        private long last;

        Body(String label, Edit<T> body) {
            this.label = label;
            this.body = body;
        }

        @Override
        public boolean run() throws SQLException {
            for (Step step : redo) {
                journal.drop(step.first(), step.last());
            }
            before = journal.last();
            VisitTx tx = new VisitTx(connection);
            try {
                result = Optional.of(body.apply(tx));
            } finally {
                tx.end();
            }
            last = journal.last();
            return last > before && record(label, before);
        }
    }

    private void pushJoining(Step step) {
        Step top = undo.peek();
        if (top != null && step.group().isPresent() && step.group().equals(top.group())) {
            undo.pop();
            undo.push(new Step(step.label(), top.first(), step.last(), step.group()));
        } else {
            undo.push(step);
        }
    }

    /** The tables changed since this was asked last. */
    Set<String> takeTouched() {
        Set<String> tables = Set.copyOf(touched);
        touched.clear();
        return tables;
    }

    Optional<String> undoLabel() {
        return Optional.ofNullable(undo.peek()).map(Step::label);
    }

    Optional<String> redoLabel() {
        return Optional.ofNullable(redo.peek()).map(Step::label);
    }

    Optional<String> undo() throws SQLException {
        return play("Undo ", undo, redo);
    }

    Optional<String> redo() throws SQLException {
        return play("Redo ", redo, undo);
    }

    private Optional<String> play(String prefix, Deque<Step> from, Deque<Step> to) throws SQLException {
        Step step = from.peek();
        if (step == null) {
            return Optional.empty();
        }
        long[] range = new long[2];
        transaction(() -> {
            range[0] = journal.playBack(step.first(), step.last());
            range[1] = journal.last();
            return record(prefix + step.label(), range[0]);
        });
        from.pop();
        to.push(new Step(step.label(), range[0] + 1, range[1], step.group()));
        return Optional.of(step.label());
    }

    private boolean record(String label, long before) throws SQLException {
        touched.addAll(journal.tables(before));
        coming = Optional.of(log.add(
                head, new LogChain.Saying(clock.instant(), label, journal.summary(before)), journal.states(before)));
        return true;
    }

    /** The edit is saved whether the head can be kept or not; a head that lags behind is none that was cut off. */
    private void keepHead() {
        head = coming;
        try {
            headFile.write(head.orElseThrow());
        } catch (IOException e) {
            LOG.log(System.Logger.Level.WARNING, "the head of the edit log could not be kept", e);
        }
    }

    /** Brings the head of the log to the disk for good. */
    @Override
    public void close() {
        try (headFile) {
            headFile.force();
        } catch (IOException e) {
            LOG.log(System.Logger.Level.WARNING, "the head of the edit log could not be kept", e);
        }
    }

    private boolean transaction(Work work) throws SQLException {
        Database.run(connection, "BEGIN IMMEDIATE");
        boolean keep = false;
        boolean done = false;
        try {
            keep = work.run();
            if (keep) {
                Database.run(connection, "COMMIT");
                keepHead();
            }
            done = keep;
        } finally {
            if (!done) {
                rollBack();
            }
        }
        return keep;
    }

    /** After some failures (a full disk) SQLite has rolled back by itself; then there is nothing to do. */
    private void rollBack() throws SQLException {
        try {
            Database.run(connection, "ROLLBACK");
        } catch (SQLException e) {
            if (!String.valueOf(e.getMessage()).contains("no transaction is active")) {
                throw e;
            }
        }
    }
}
