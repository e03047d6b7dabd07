package quarterlight.store.takeover;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.sqlite.ProgressHandler;
import org.sqlite.SQLiteConnection;
import org.sqlite.SQLiteLimits;
import quarterlight.store.log.LogChain;
import quarterlight.store.log.LogHead;
import quarterlight.store.log.RowStates;
import quarterlight.store.rows.TableShape;

/**
 * Takes a database over that came from somebody else: it is read row by row, none of its triggers, views, functions or expressions is run, and what
 * holds is written into a fresh database that this program declares. Whatever is left out or set right is told.
 */
public final class DatabaseTakeover {
    /** What the edit log calls it when rows were left out. */
    public static final String LABEL = "Checked on receipt";

    private static final int STEPS_BETWEEN_LOOKS = 100_000;
    private static final int MAX_CELL_BYTES = 64 << 20;

    private final Declared wanted;
    private final List<String> tables;
    private final List<TableShape<?>> shapes;

    /**
     * @param wanted what a database of the source's schema declares
     * @param tables the tables of that schema
     * @param shapes of the kinds of rows of the present schema
     */
    public DatabaseTakeover(Declared wanted, List<String> tables, List<TableShape<?>> shapes) {
        this.wanted = Objects.requireNonNull(wanted, "wanted");
        this.tables = List.copyOf(tables);
        this.shapes = List.copyOf(shapes);
    }

    /** Brings the fresh database from the source's schema to the present one. */
    @FunctionalInterface
    public interface Upgrading {
        void run() throws SQLException;
    }

    /** Takes from a connection what a database from outside must not have: attaching, long values, endless questions. */
    public static void restrain(Connection suspect, long maxMillis) throws SQLException {
        long end = System.nanoTime() + maxMillis * 1_000_000;
        var database = ((SQLiteConnection) suspect).getDatabase();
        database.limit(SQLiteLimits.SQLITE_LIMIT_ATTACHED.getId(), 0);
        database.limit(SQLiteLimits.SQLITE_LIMIT_LENGTH.getId(), MAX_CELL_BYTES);
        ProgressHandler.setHandler(suspect, STEPS_BETWEEN_LOOKS, new ProgressHandler() {
            @Override
            protected int progress() {
                return System.nanoTime() > end ? 1 : 0;
            }
        });
        for (String pragma : List.of("trusted_schema = OFF", "cell_size_check = ON", "query_only = ON")) {
            run(suspect, "PRAGMA " + pragma);
        }
    }

    /**
     * Fills a fresh database of the source's schema and brings it to the present one.
     *
     * @param from restrained
     * @param into empty but for the schema
     * @param lost the end of the log that was kept elsewhere, if the source does not hold it
     * @return what was left out or set right, one sentence each
     */
    public List<String> take(Connection from, Connection into, Upgrading upgrading, Optional<LogHead> lost, Instant now)
            throws SQLException {
        TakeoverNotes slip = new TakeoverNotes();
        LeftOutRows leftOut = new LeftOutRows(slip);
        Declared found = Declared.of(from);
        found.differences(wanted).forEach(slip::add);
        run(into, "PRAGMA foreign_keys = OFF");
        run(into, "BEGIN IMMEDIATE");
        RowCopy copy = new RowCopy(from, into, slip, leftOut, room(from));
        for (String table : tables) {
            if (found.hasPlainTable(table)) {
                copy.copy(table);
            } else if (found.items().values().stream()
                    .anyMatch(item -> item.name().equals(table))) {
                slip.add("Table " + table + " is no table that lies in the file: left out.");
            }
        }
        run(into, "COMMIT");
        boolean chainLost = LogChain.isKept(into) && new LogChain(into).head().isEmpty();
        if (chainLost) {
            slip.add("The edit log has no hash chain, so nothing tells what was changed apart from it: begun anew.");
        }
        upgrading.run();
        run(into, "BEGIN IMMEDIATE");
        new ValueCheck(into, shapes, slip, leftOut).run();
        lost.ifPresent(head -> slip.add("The edit log once went on to entry " + head.entry()
                + ", which is not there: what was edited up to then was cut off or exchanged."
                + " Look for a copy of the visit that is later."));
        log(into, leftOut, lost, now);
        run(into, "COMMIT");
        run(into, "PRAGMA foreign_keys = ON");
        return slip.lines();
    }

    /** What a log that is chained must tell of, so that it goes on holding. */
    private static void log(Connection into, LeftOutRows leftOut, Optional<LogHead> lost, Instant now)
            throws SQLException {
        LogChain chain = new LogChain(into);
        Optional<LogHead> head = chain.head();
        RowStates states = leftOut.gone();
        lost.ifPresent(end -> states.putCut(end.entry(), end.hash()));
        if (head.isEmpty()) {
            chain.begin(LogChain.BEGINS, now);
        } else if (!states.isEmpty()) {
            List<String> parts = new ArrayList<>();
            if (leftOut.count() > 0) {
                parts.add("rows left out " + leftOut.count());
            }
            lost.ifPresent(end -> parts.add("the log was cut before entry " + end.entry()));
            chain.add(head, new LogChain.Saying(now, LABEL, String.join(", ", parts)), states);
        }
    }

    /** Twice what the file holds: no sound file holds more. */
    private static long room(Connection from) throws SQLException {
        return 2 * number(from, "page_count") * number(from, "page_size");
    }

    private static long number(Connection connection, String pragma) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement("PRAGMA main." + pragma);
                ResultSet result = select.executeQuery()) {
            return result.next() ? result.getLong(1) : 0;
        }
    }

    private static void run(Connection connection, String sql) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            statement.execute();
        }
    }
}
