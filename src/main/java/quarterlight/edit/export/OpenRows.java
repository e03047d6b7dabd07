package quarterlight.edit.export;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import quarterlight.visit.StoredRows;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.row.RecordKind;

/** Rows as they are kept, of which only those go out that the visit has as a buyer may see it; what names a file that stays at home names it no more. */
final class OpenRows {
    private static final String PHOTOS = "photos";
    private static final String PHOTO = "photo_id";
    private static final String MORE = "more_photo_ids";
    private static final String MOMENT = "at_s";
    /** Tables whose rows stand without a photo too. */
    private static final List<String> STAND_ALONE = List.of("signs", "marks", "statements", "claims");

    private final Set<Object> photos;
    private final Map<String, Set<Object>> rows = new HashMap<>();

    /** @param open the visit as a buyer may see it */
    OpenRows(VisitRecord open) {
        photos =
                open.photos().stream().map(photo -> (Object) photo.id().value()).collect(Collectors.toSet());
        RecordKind.all().forEach(kind -> rows.put(kind.word(), ids(kind, open)));
    }

    private static <T> Set<Object> ids(RecordKind<T> kind, VisitRecord open) {
        return kind.of(open).stream().map(row -> (Object) row.id().value()).collect(Collectors.toSet());
    }

    StoredRows of(StoredRows table) {
        int id = table.columns().indexOf("id");
        if (table.table().equals(PHOTOS)) {
            return kept(table, row -> isOpen(row.get(id)));
        }
        StoredRows given = rows.containsKey(table.table())
                ? kept(table, row -> rows.get(table.table())
                        .contains(row.get(id).orElseThrow()))
                : table;
        int photo = table.columns().indexOf(PHOTO);
        if (photo < 0) {
            return given;
        }
        return STAND_ALONE.contains(table.table())
                ? pointingElsewhere(given, photo)
                : kept(given, row -> row.get(photo).isEmpty() || isOpen(row.get(photo)));
    }

    private static StoredRows kept(StoredRows table, Predicate<List<Optional<Object>>> wanted) {
        return new StoredRows(
                table.table(),
                table.columns(),
                table.rows().stream().filter(wanted).toList());
    }

    private boolean isOpen(Optional<Object> cell) {
        return cell.filter(photos::contains).isPresent();
    }

    private StoredRows pointingElsewhere(StoredRows table, int photo) {
        int more = table.columns().indexOf(MORE);
        int moment = table.columns().indexOf(MOMENT);
        return new StoredRows(
                table.table(),
                table.columns(),
                table.rows().stream().map(row -> open(row, photo, more, moment)).toList());
    }

    private List<Optional<Object>> open(List<Optional<Object>> row, int photo, int more, int moment) {
        List<Optional<Object>> open = new ArrayList<>(row);
        List<Long> further = new ArrayList<>();
        if (more >= 0) {
            row.get(more).stream()
                    .flatMap(ids -> Arrays.stream(ids.toString().split(" ")))
                    .map(Long::valueOf)
                    .filter(photos::contains)
                    .forEach(further::add);
        }
        if (row.get(photo).isPresent() && !isOpen(row.get(photo))) {
            open.set(photo, further.isEmpty() ? Optional.empty() : Optional.of(further.remove(0)));
            if (moment >= 0) {
                open.set(moment, Optional.empty());
            }
        }
        if (more >= 0) {
            open.set(
                    more,
                    Optional.of(further.stream().map(String::valueOf).collect(Collectors.joining(" ")))
                            .filter(ids -> !ids.isEmpty())
                            .map(ids -> (Object) ids));
        }
        return open;
    }
}
