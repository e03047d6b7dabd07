package quarterlight.store.library;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quarterlight.visit.pin.RecordId;

/**
 * Something that a visit says, as the index keeps it.
 *
 * @param kind of rows: statements, marks, pins and so on; {@code visit} for the car and the visit themselves
 * @param zone where, in words; empty if nowhere in particular
 * @param text as it is shown
 * @param more words by which it is found and that are not shown
 * @param picture what shows it
 * @param row which one of its kind it is in the visit; nothing for the car and the visit
 * @param numbers of a stamp, tag or casting: what it reads, ready to be compared; not given back by the index
 */
public record LibraryRow(
        String kind,
        String zone,
        String text,
        String more,
        Optional<LibraryPicture> picture,
        Optional<RecordId> row,
        List<String> numbers) {
    public LibraryRow {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(zone, "zone");
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(more, "more");
        Objects.requireNonNull(picture, "picture");
        Objects.requireNonNull(row, "row");
        numbers = List.copyOf(numbers);
    }
}
