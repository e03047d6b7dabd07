package quarterlight.store.log;

import java.time.Instant;
import java.util.Objects;

/**
 * One line of the edit log.
 *
 * @param label the edit as the user knows it
 * @param summary which rows were added, changed and removed
 */
public record LogEntry(Instant at, String label, String summary) {
    public LogEntry {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(summary, "summary");
    }
}
