package quarterlight.ui.kit.place;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import quarterlight.car.ZoneId;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.row.RecordKind;

/**
 * The rows in which two states of a visit differ, such as before and after an undo, with the zones and photos they are of. Immutable.
 *
 * @param kind of the rows; empty if photos themselves differ, as by setting one aside
 * @param rows those of that kind that the later state holds
 */
public record ChangedRows(Optional<RecordKind<?>> kind, List<RecordId> rows, Set<ZoneId> zones, List<PhotoId> photos) {
    public ChangedRows {
        Objects.requireNonNull(kind, "kind");
        rows = List.copyOf(rows);
        zones = java.util.Collections.unmodifiableSet(new LinkedHashSet<>(zones));
        photos = List.copyOf(photos);
    }

    /** Empty if only facts of the car or the visit differ, which have no place on it. */
    public static Optional<ChangedRows> between(VisitRecord before, VisitRecord after) {
        for (RecordKind<?> kind : RecordKind.all()) {
            Optional<ChangedRows> changed = of(kind, before, after);
            if (changed.isPresent()) {
                return changed;
            }
        }
        Set<Photo> known = Set.copyOf(before.photos());
        List<PhotoId> photos = after.photos().stream()
                .filter(photo -> !known.contains(photo))
                .map(Photo::id)
                .toList();
        return photos.isEmpty()
                ? Optional.empty()
                : Optional.of(new ChangedRows(Optional.empty(), List.of(), Set.of(), photos));
    }

    /** Where one row is; empty if the visit does not hold it. */
    public static Optional<ChangedRows> of(Subject.OfRow row, VisitRecord visit) {
        return of(row.kind(), row.row(), visit);
    }

    private static <T> Optional<ChangedRows> of(RecordKind<T> kind, RecordId id, VisitRecord visit) {
        return kind.of(visit).stream()
                .filter(row -> row.id().equals(id))
                .findFirst()
                .map(row -> placed(kind, List.of(id), List.of(row)));
    }

    private static <T> Optional<ChangedRows> of(RecordKind<T> kind, VisitRecord before, VisitRecord after) {
        List<Recorded<T>> old = kind.of(before);
        List<Recorded<T>> now = kind.of(after);
        if (old.equals(now)) {
            return Optional.empty();
        }
        Map<RecordId, Recorded<T>> gone = new HashMap<>();
        old.forEach(row -> gone.put(row.id(), row));
        List<Recorded<T>> changed = new ArrayList<>();
        List<RecordId> held = new ArrayList<>();
        for (Recorded<T> row : now) {
            if (!row.equals(gone.remove(row.id()))) {
                changed.add(row);
                held.add(row.id());
            }
        }
        old.stream().filter(row -> gone.containsKey(row.id())).forEach(changed::add);
        return Optional.of(placed(kind, held, changed));
    }

    private static <T> ChangedRows placed(RecordKind<T> kind, List<RecordId> held, List<Recorded<T>> rows) {
        Set<ZoneId> zones = new LinkedHashSet<>();
        Set<PhotoId> photos = new LinkedHashSet<>();
        rows.forEach(row -> kind.values(row.value()).forEach(value -> {
            if (value instanceof ZoneId zone) {
                zones.add(zone);
            } else if (value instanceof PhotoId photo) {
                photos.add(photo);
            }
        }));
        return new ChangedRows(Optional.of(kind), held, zones, List.copyOf(photos));
    }

    /** True for rows of one of these kinds. */
    public boolean isOf(RecordKind<?>... kinds) {
        return kind.filter(List.of(kinds)::contains).isPresent();
    }
}
