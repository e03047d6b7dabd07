package quarterlight.store.log;

import java.util.Map;
import java.util.TreeMap;

/**
 * What rows are after an edit, by table and number: a digest, or gone. As text: {@code pin 3=Ab…,4=-;reading 7=Cd…}; a lone {@code !} before a
 * table's name begins a remark for the audit, {@code !cut 17=Ef…}: entry 17 with this hash was known to be there and is not.
 */
public final class RowStates {
    /** Stands for a row that is not there any more. */
    public static final String GONE = "-";

    private static final String CUT = "!cut";

    private final Map<String, Map<Long, String>> tables = new TreeMap<>();

    public RowStates put(String table, long id, String digest) {
        tables.computeIfAbsent(table, name -> new TreeMap<>()).put(id, digest);
        return this;
    }

    /** Notes that the log went on to an entry that is not there. */
    public RowStates putCut(long entry, String hash) {
        return put(CUT, entry, hash);
    }

    /** Entries that were known to be there and are not: their numbers and hashes. */
    public Map<Long, String> cut() {
        return tables.getOrDefault(CUT, Map.of());
    }

    public boolean isEmpty() {
        return tables.isEmpty();
    }

    public Map<Long, String> of(String table) {
        return tables.getOrDefault(table, Map.of());
    }

    /** Takes over what a later entry says. */
    void then(RowStates later) {
        later.tables.forEach((table, rows) -> {
            if (!table.equals(CUT)) {
                tables.computeIfAbsent(table, name -> new TreeMap<>()).putAll(rows);
            }
        });
    }

    public String text() {
        StringBuilder out = new StringBuilder();
        tables.forEach((table, rows) -> {
            out.append(out.isEmpty() ? "" : ";").append(table);
            char before = ' ';
            for (Map.Entry<Long, String> row : rows.entrySet()) {
                out.append(before).append(row.getKey()).append('=').append(row.getValue());
                before = ',';
            }
        });
        return out.toString();
    }

    /** @throws IllegalArgumentException if the text is no such list */
    public static RowStates parse(String text) {
        RowStates states = new RowStates();
        if (text.isEmpty()) {
            return states;
        }
        for (String part : text.split(";", -1)) {
            int blank = part.indexOf(' ');
            if (blank <= 0) {
                throw new IllegalArgumentException("no list of rows: " + part);
            }
            for (String row : part.substring(blank + 1).split(",", -1)) {
                int sign = row.indexOf('=');
                if (sign <= 0) {
                    throw new IllegalArgumentException("no row: " + row);
                }
                states.put(part.substring(0, blank), Long.parseLong(row.substring(0, sign)), row.substring(sign + 1));
            }
        }
        return states;
    }
}
