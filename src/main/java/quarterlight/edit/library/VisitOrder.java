package quarterlight.edit.library;

import java.util.Comparator;
import java.util.Optional;
import quarterlight.store.library.LibraryVisit;
import quarterlight.units.Worded;

/** By what visits are put in order. */
public enum VisitOrder implements Worded {
    CAR,
    /** The newest first. */
    DATE,
    CLIENT,
    PLACE;

    private Optional<String> of(LibraryVisit visit) {
        return switch (this) {
            case CAR -> Optional.of(visit.car());
            case DATE -> visit.date();
            case CLIENT -> visit.client();
            case PLACE -> visit.place();
        };
    }

    /** Visits that lack it come last; equal ones by their folders. */
    public Comparator<LibraryVisit> comparator() {
        Comparator<String> words = this == DATE ? Comparator.reverseOrder() : String.CASE_INSENSITIVE_ORDER;
        return Comparator.<LibraryVisit, Boolean>comparing(visit -> of(visit).isEmpty())
                .thenComparing(visit -> of(visit).orElse(""), words)
                .thenComparing(LibraryVisit::folder);
    }
}
