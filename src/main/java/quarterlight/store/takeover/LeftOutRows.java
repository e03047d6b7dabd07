package quarterlight.store.takeover;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import quarterlight.store.log.RowStates;

/** The rows that were not taken over, each told in the notes of the takeover. */
final class LeftOutRows {
    private final TakeoverNotes slip;
    private final Map<String, Set<Long>> rows = new TreeMap<>();

    LeftOutRows(TakeoverNotes slip) {
        this.slip = slip;
    }

    void add(String table, long id, String why) {
        slip.add("Row " + id + " of table " + table + " was left out: " + why + ".");
        rows.computeIfAbsent(table, name -> new TreeSet<>()).add(id);
    }

    int count() {
        return rows.values().stream().mapToInt(Set::size).sum();
    }

    /** For the edit log, which vouches for its own rows by its chain. */
    RowStates gone() {
        RowStates states = new RowStates();
        rows.forEach((table, ids) -> {
            if (!table.equals("edit_log")) {
                ids.forEach(id -> states.put(table, id, RowStates.GONE));
            }
        });
        return states;
    }
}
