package quarterlight.ui.pages;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quarterlight.store.log.LogEntry;

/**
 * From where on the edit log tells of changes that the pages on the disk do not show. Pages made in this window are known by how much stood in
 * the log when they were begun, so that what was changed meanwhile counts too; others by the time of their files.
 *
 * @param made when the files were made
 * @param entries how much stood in the log, for files made here
 */
record ChangesSince(Instant made, Optional<Integer> entries) {
    ChangesSince {
        Objects.requireNonNull(made, "made");
        Objects.requireNonNull(entries, "entries");
    }

    /** The changes as the log names them, the oldest first. */
    List<String> in(List<LogEntry> log) {
        return log.stream()
                .skip(entries.orElse(0))
                .filter(entry -> entries.isPresent() || entry.at().isAfter(made))
                .map(LogEntry::label)
                .toList();
    }
}
