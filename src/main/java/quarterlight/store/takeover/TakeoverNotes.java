package quarterlight.store.takeover;

import java.util.ArrayList;
import java.util.List;

/** What was left out or set right while a database was taken over; only so many sentences are kept, the rest is counted. */
final class TakeoverNotes {
    private static final int MAX_LINES = 200;

    private final List<String> lines = new ArrayList<>();
    private int more;

    void add(String line) {
        if (lines.size() < MAX_LINES) {
            lines.add(line);
        } else {
            more++;
        }
    }

    boolean isEmpty() {
        return lines.isEmpty();
    }

    List<String> lines() {
        List<String> all = new ArrayList<>(lines);
        if (more > 0) {
            all.add("And " + more + " more of the same kinds.");
        }
        return List.copyOf(all);
    }
}
