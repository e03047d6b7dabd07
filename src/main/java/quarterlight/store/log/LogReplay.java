package quarterlight.store.log;

import static quarterlight.language.Sentences.say;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** The edit log read from its beginning: whether it is a whole chain, and whether the rows are as it leaves them. */
public final class LogReplay {
    private static final String LOG = "edit_log";
    private static final int MAX_SENTENCES = 40;

    private final Connection connection;
    private final List<String> faults = new ArrayList<>();
    private final RowStates states = new RowStates();
    private final Set<Long> unchained = new TreeSet<>();
    private Optional<LogHead> head = Optional.empty();
    private int entries;

    private LogReplay(Connection connection) {
        this.connection = connection;
    }

    /** Within the present transaction. */
    public static LogReplay of(Connection connection) throws SQLException {
        LogReplay replay = new LogReplay(connection);
        replay.run();
        return replay;
    }

    /** The end of the log as far as it is a chain; empty if it has none. */
    public Optional<LogHead> head() {
        return head;
    }

    /** How many entries there are, the unchained ones of older visits too. */
    public int entries() {
        return entries;
    }

    private static final String ALL = "SELECT id, at, label, summary, who, changes, hash FROM edit_log ORDER BY id";

    private void run() throws SQLException {
        try (PreparedStatement select = connection.prepareStatement(ALL);
                ResultSet result = select.executeQuery()) {
            boolean whole = true;
            while (result.next()) {
                entries++;
                ChainedEntry entry = entry(result);
                if (entry.hash().isEmpty() && head.isEmpty()) {
                    unchained.add(entry.id());
                } else {
                    whole = whole && follows(entry);
                    take(entry);
                }
            }
        }
        if (head.isEmpty()) {
            faults.add(say("audit.no-chain"));
        }
    }

    private static ChainedEntry entry(ResultSet result) throws SQLException {
        return new ChainedEntry(
                result.getLong(1),
                text(result, 2),
                text(result, 3),
                text(result, 4),
                Optional.ofNullable(result.getString(5)),
                Optional.ofNullable(result.getString(6)),
                Optional.ofNullable(result.getString(7)));
    }

    private static String text(ResultSet result, int column) throws SQLException {
        return Optional.ofNullable(result.getString(column)).orElse("");
    }

    /** Only the first break is told; what follows it cannot be judged. */
    private boolean follows(ChainedEntry entry) {
        String before = head.map(LogHead::hash).orElse("");
        boolean next = head.isEmpty() || entry.id() == head.get().entry() + 1;
        boolean same = entry.hash().equals(Optional.of(LogChain.hash(before, entry)));
        if (!next || !same) {
            faults.add(say("audit.chain", entry.id()));
        }
        return next && same;
    }

    private void take(ChainedEntry entry) {
        head = Optional.of(new LogHead(entry.id(), entry.hash().orElse("")));
        try {
            RowStates said = RowStates.parse(entry.changes().orElse(""));
            states.then(said);
            said.cut().forEach((number, hash) -> faults.add(say("audit.cut", entry.id(), number, hash)));
        } catch (IllegalArgumentException e) {
            faults.add(say("audit.rows", entry.id(), e.getMessage()));
        }
    }

    /** What does not hold, one sentence each. */
    public List<String> faults(List<String> tables) throws SQLException {
        List<String> found = new ArrayList<>(faults);
        if (head.isPresent()) {
            CurrentRowDigests now = new CurrentRowDigests(connection);
            for (String table : tables) {
                compare(table, table.equals(LOG) ? unchained(now) : now.of(table), found);
            }
        }
        if (found.size() <= MAX_SENTENCES) {
            return found;
        }
        List<String> first = new ArrayList<>(found.subList(0, MAX_SENTENCES));
        first.add(say("audit.more", (found.size() - MAX_SENTENCES)));
        return first;
    }

    /** Entries with a hash are vouched for by the chain; those before it by the entry with which it begins. */
    private Map<Long, String> unchained(CurrentRowDigests now) throws SQLException {
        Map<Long, String> rows = now.of(LOG);
        rows.keySet().retainAll(unchained);
        return rows;
    }

    private void compare(String table, Map<Long, String> rows, List<String> found) {
        Map<Long, String> said = states.of(table);
        rows.forEach((id, digest) -> {
            String logged = said.getOrDefault(id, RowStates.GONE);
            if (logged.equals(RowStates.GONE)) {
                found.add(say("audit.there", id, table));
            } else if (!logged.equals(digest)) {
                found.add(say("audit.differs", id, table));
            }
        });
        said.forEach((id, logged) -> {
            if (!logged.equals(RowStates.GONE) && !rows.containsKey(id)) {
                found.add(say("audit.gone", id, table));
            }
        });
    }

    /**
     * What an entry must say so that the log tells of all changes since now and of none before: of rows that are as the log has them now, what
     * they have become then.
     */
    public Agreed agreed(List<String> tables) throws SQLException {
        Agreed agreed = new Agreed();
        CurrentRowDigests now = new CurrentRowDigests(connection);
        for (String table : tables) {
            Map<Long, String> said = states.of(table);
            now.of(table).forEach((id, digest) -> {
                if (digest.equals(said.get(id))) {
                    agreed.states.put(table, id, digest);
                }
            });
        }
        return agreed;
    }

    /** Rows that were as the log has them. */
    public static final class Agreed {
        private final RowStates states = new RowStates();

        /** Those of them that are otherwise now, and all rows of tables that were not there. */
        public RowStates changed(Connection connection, List<String> before, List<String> after) throws SQLException {
            RowStates changed = new RowStates();
            CurrentRowDigests now = new CurrentRowDigests(connection);
            for (String table : after) {
                Map<Long, String> rows = now.of(table);
                states.of(table).forEach((id, digest) -> {
                    String become = rows.getOrDefault(id, RowStates.GONE);
                    if (!become.equals(digest)) {
                        changed.put(table, id, become);
                    }
                });
                if (!before.contains(table)) {
                    rows.forEach((id, digest) -> changed.put(table, id, digest));
                }
            }
            return changed;
        }
    }
}
