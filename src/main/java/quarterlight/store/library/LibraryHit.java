package quarterlight.store.library;

import java.util.Objects;

/** A row that was found, and the visit that says it. */
public record LibraryHit(LibraryVisit visit, LibraryRow row) {
    public LibraryHit {
        Objects.requireNonNull(visit, "visit");
        Objects.requireNonNull(row, "row");
    }
}
