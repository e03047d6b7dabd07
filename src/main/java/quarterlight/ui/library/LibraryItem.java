package quarterlight.ui.library;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import quarterlight.store.library.LibraryHit;
import quarterlight.store.library.LibraryPicture;
import quarterlight.store.library.LibraryRow;
import quarterlight.store.library.LibraryVisit;
import quarterlight.ui.kit.place.Subject;
import quarterlight.visit.row.RecordKind;

/**
 * A line of the list: a visit, or a row of it that was found.
 *
 * @param row nothing for the visit itself
 * @param found how many rows of the visit were found; 0 where nothing was asked
 */
record LibraryItem(LibraryVisit visit, Optional<LibraryRow> row, int found) {
    LibraryItem {
        Objects.requireNonNull(visit, "visit");
        Objects.requireNonNull(row, "row");
    }

    /** Every visit, in the order given. */
    static List<LibraryItem> ofVisits(List<LibraryVisit> visits) {
        return visits.stream()
                .map(visit -> new LibraryItem(visit, Optional.empty(), 0))
                .toList();
    }

    /** Each visit above its rows; visits in the order in which their first rows stand. */
    static List<LibraryItem> ofHits(List<LibraryHit> hits) {
        Map<LibraryVisit, List<LibraryRow>> grouped = new LinkedHashMap<>();
        hits.forEach(hit ->
                grouped.computeIfAbsent(hit.visit(), visit -> new ArrayList<>()).add(hit.row()));
        List<LibraryItem> items = new ArrayList<>();
        grouped.forEach((visit, rows) -> {
            items.add(new LibraryItem(visit, Optional.empty(), rows.size()));
            rows.forEach(row -> items.add(new LibraryItem(visit, Optional.of(row), rows.size())));
        });
        return items;
    }

    /** What shows it: of a row its own photo, of a visit the car. */
    Optional<LibraryPicture> picture() {
        return row.isPresent() ? row.get().picture() : visit.picture();
    }

    /** Which row of the visit it is; nothing for the visit itself. */
    Optional<Subject.OfRow> place() {
        return row.flatMap(found ->
                RecordKind.find(found.kind()).flatMap(kind -> found.row().map(id -> new Subject.OfRow(kind, id))));
    }

    /** Whether it leads a visit's rows. */
    boolean isHead() {
        return row.isEmpty();
    }
}
