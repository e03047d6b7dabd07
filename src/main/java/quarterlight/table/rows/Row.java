package quarterlight.table.rows;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import quarterlight.table.cell.Cells;
import quarterlight.table.cell.NumberText;
import quarterlight.table.cell.RowContext;
import quarterlight.visit.PhotoId;
import quarterlight.visit.ViewPoint;

/** Gathers the filled cells of one row that is to be written. */
final class Row {
    private final RowContext context;
    private final Map<String, String> cells = new HashMap<>();

    Row(RowContext context) {
        this.context = context;
    }

    Row put(String column, Object value) {
        cells.put(column, value.toString());
        return this;
    }

    Row put(String column, Optional<?> value) {
        value.ifPresent(v -> cells.put(column, v.toString()));
        return this;
    }

    Row photo(Optional<PhotoId> photo) {
        photo.ifPresent(id -> cells.put("photo", context.nameOf(id)));
        return this;
    }

    /** Several names in one cell. */
    Row photos(List<PhotoId> photos) {
        if (!photos.isEmpty()) {
            cells.put("photo", photos.stream().map(context::nameOf).collect(Collectors.joining(Cells.BETWEEN_PHOTOS)));
        }
        return this;
    }

    Row point(Optional<ViewPoint> point) {
        point.ifPresent(p -> {
            cells.put("view", p.view().word());
            cells.put("x", NumberText.of(p.x()));
            cells.put("y", NumberText.of(p.y()));
        });
        return this;
    }

    static String yesOrNo(boolean yes) {
        return yes ? "yes" : "no";
    }

    Map<String, String> cells() {
        return Map.copyOf(cells);
    }
}
