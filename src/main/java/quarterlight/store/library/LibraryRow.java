package quarterlight.store.library;

import java.util.Objects;
import java.util.Optional;

/**
 * Something that a visit says, as the index keeps it.
 *
 * @param kind of rows: statements, marks, pins and so on; {@code visit} for the car and the visit themselves
 * @param zone where, in words; empty if nowhere in particular
 * @param text as it is shown
 * @param more words by which it is found and that are not shown
 * @param photo the file that shows it, within the visit
 */
public record LibraryRow(String kind, String zone, String text, String more, Optional<String> photo) {
    public LibraryRow {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(zone, "zone");
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(more, "more");
        Objects.requireNonNull(photo, "photo");
    }
}
