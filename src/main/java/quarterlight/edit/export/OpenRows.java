package quarterlight.edit.export;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import quarterlight.visit.HeldBack;
import quarterlight.visit.StoredRows;
import quarterlight.visit.photo.PhotoId;

/** Rows as they are kept, without what points at papers and memos that are held back from the buyer. */
final class OpenRows {
    private static final String PHOTOS = "photos";
    private static final String PHOTO = "photo_id";
    private static final String MORE = "more_photo_ids";
    private static final String MOMENT = "at_s";
    /** Tables whose rows stand without a photo too. */
    private static final List<String> STAND_ALONE = List.of("signs", "marks", "statements", "claims");

    private final HeldBack held;

    OpenRows(HeldBack held) {
        this.held = held;
    }

    StoredRows of(StoredRows table) {
        if (held.count() == 0) {
            return table;
        }
        if (table.table().equals(PHOTOS)) {
            return without(table, table.columns().indexOf("id"));
        }
        int photo = table.columns().indexOf(PHOTO);
        if (photo < 0) {
            return table;
        }
        return STAND_ALONE.contains(table.table()) ? pointingElsewhere(table, photo) : without(table, photo);
    }

    private StoredRows without(StoredRows table, int column) {
        return new StoredRows(
                table.table(),
                table.columns(),
                table.rows().stream().filter(row -> !isHeld(row.get(column))).toList());
    }

    private boolean isHeld(Optional<Object> cell) {
        return cell.filter(id -> held.holds(new PhotoId((Long) id))).isPresent();
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
                    .filter(id -> !held.holds(new PhotoId(id)))
                    .forEach(further::add);
        }
        if (isHeld(row.get(photo))) {
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
