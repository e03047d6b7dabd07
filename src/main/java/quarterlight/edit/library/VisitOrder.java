package quarterlight.edit.library;

import java.util.Comparator;
import java.util.Optional;
import java.util.function.Function;
import quarterlight.store.library.LibraryVisit;
import quarterlight.units.Worded;

/** By what visits are put in order. */
public enum VisitOrder implements Worded {
    CAR(visit -> Optional.of(visit.car())),
    /** The newest first. */
    DATE(LibraryVisit::date),
    CLIENT(LibraryVisit::client),
    PLACE(LibraryVisit::place);

    private final Function<LibraryVisit, Optional<String>> key;

    VisitOrder(Function<LibraryVisit, Optional<String>> key) {
        this.key = key;
    }

    /** Visits that lack it come last; equal ones by their folders. */
    public Comparator<LibraryVisit> comparator() {
        Comparator<String> words = this == DATE ? Comparator.reverseOrder() : String.CASE_INSENSITIVE_ORDER;
        return Comparator.<LibraryVisit, Boolean>comparing(
                        visit -> key.apply(visit).isEmpty())
                .thenComparing(visit -> key.apply(visit).orElse(""), words)
                .thenComparing(LibraryVisit::folder);
    }
}
