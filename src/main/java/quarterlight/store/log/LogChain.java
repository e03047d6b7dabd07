package quarterlight.store.log;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The edit log as a hash chain: each entry bears the hash over who, when, what, the rows that it changed, and the hash of the entry before. Who
 * knows the last hash can tell whether anything before it was changed, taken out or put in. Entries of visits made before there was a chain
 * have no hash; the first chained entry counts them among the rows that it found.
 */
public final class LogChain {
    /** The first entry of a new visit. */
    public static final String MADE = "Visit made";

    /** The first chained entry of a visit that was there before. */
    public static final String BEGINS = "The hash chain begins over what is there";

    private static final String HASH_OF = "quarterlight edit log 1";

    private final Connection connection;

    public LogChain(Connection connection) {
        this.connection = connection;
    }

    /** What an entry says beside its place in the chain. */
    public record Saying(Instant at, String label, String summary) {}

    private static final String LAST = "SELECT id, hash FROM edit_log ORDER BY id DESC LIMIT 1";

    /** The end of the log; empty if it is not chained. */
    public Optional<LogHead> head() throws SQLException {
        try (PreparedStatement select = connection.prepareStatement(LAST);
                ResultSet result = select.executeQuery()) {
            return result.next() && result.getString(2) != null
                    ? Optional.of(new LogHead(result.getLong(1), result.getString(2)))
                    : Optional.empty();
        }
    }

    private static final String HASH = "SELECT hash FROM edit_log WHERE id = ?";

    /** Whether an entry of this number and hash stands in the log. */
    public boolean holds(LogHead head) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement(HASH)) {
            select.setLong(1, head.entry());
            try (ResultSet result = select.executeQuery()) {
                return result.next() && head.hash().equals(result.getString(1));
            }
        }
    }

    private static final String INSERT =
            "INSERT INTO edit_log (id, at, label, summary, who, changes, hash) VALUES (?, ?, ?, ?, ?, ?, ?)";

    /**
     * Adds an entry within the present transaction.
     *
     * @param before the end of the log as it is; empty for the first chained entry
     * @return the new end
     */
    public LogHead add(Optional<LogHead> before, Saying saying, RowStates changes) throws SQLException {
        long id = before.isPresent() ? before.get().entry() + 1 : lastNumber() + 1;
        String label = plain(saying.label());
        String at = saying.at().toString();
        String rows = changes.text();
        Optional<String> who = inspector();
        String hash = hash(
                before.map(LogHead::hash).orElse(""),
                new ChainedEntry(id, at, label, saying.summary(), who, Optional.of(rows), Optional.empty()));
        try (PreparedStatement insert = connection.prepareStatement(INSERT)) {
            insert.setLong(1, id);
            insert.setString(2, at);
            insert.setString(3, label);
            insert.setString(4, saying.summary());
            if (who.isPresent()) {
                insert.setString(5, who.get());
            } else {
                insert.setNull(5, Types.VARCHAR);
            }
            insert.setString(6, rows);
            insert.setString(7, hash);
            insert.executeUpdate();
        }
        return new LogHead(id, hash);
    }

    private static final String WHO = "SELECT inspector FROM visit WHERE id = 1";

    /** Who edits, as the visit says at this moment. */
    private Optional<String> inspector() throws SQLException {
        try (PreparedStatement select = connection.prepareStatement(WHO);
                ResultSet result = select.executeQuery()) {
            return result.next() ? Optional.ofNullable(result.getString(1)) : Optional.empty();
        }
    }

    private static final String COUNT = "SELECT coalesce(max(id), 0) FROM edit_log";

    private long lastNumber() throws SQLException {
        try (PreparedStatement select = connection.prepareStatement(COUNT);
                ResultSet result = select.executeQuery()) {
            return result.next() ? result.getLong(1) : 0;
        }
    }

    /** A NUL would end a text early in SQL. */
    private static String plain(String text) {
        return text.replace('\0', '\uFFFD');
    }

    private static final String KEPT = "SELECT count(*) FROM pragma_table_info('edit_log') WHERE name = 'hash'";

    /** Whether the log of this database can be a chain at all: older schemas have none. */
    public static boolean isKept(Connection connection) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement(KEPT);
                ResultSet result = select.executeQuery()) {
            return result.next() && result.getInt(1) == 1;
        }
    }

    private static final String TABLES = "SELECT name FROM main.sqlite_schema WHERE type = 'table' AND name NOT LIKE"
            + " 'sqlite\\_%' ESCAPE '\\' ORDER BY name";

    /** Begins the chain over every row that is there. */
    public LogHead begin(String label, Instant at) throws SQLException {
        RowStates states = new RowStates();
        List<String> counts = new ArrayList<>();
        CurrentRowDigests now = new CurrentRowDigests(connection);
        for (String table : tables()) {
            Map<Long, String> rows = now.of(table);
            rows.forEach((id, digest) -> states.put(table, id, digest));
            if (!rows.isEmpty()) {
                counts.add(table + " found " + rows.size());
            }
        }
        return add(Optional.empty(), new Saying(at, label, String.join(", ", counts)), states);
    }

    private List<String> tables() throws SQLException {
        List<String> found = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement(TABLES);
                ResultSet result = select.executeQuery()) {
            while (result.next()) {
                found.add(result.getString(1));
            }
        }
        return found;
    }

    static String hash(String before, ChainedEntry entry) {
        return HexFormat.of()
                .formatHex(new Sha()
                        .add(HASH_OF)
                        .add(before)
                        .add(Long.toString(entry.id()))
                        .add(entry.at())
                        .add(entry.who().orElse(""))
                        .add(entry.label())
                        .add(entry.summary())
                        .add(entry.changes().orElse(""))
                        .finish());
    }
}
