package quarterlight.table.drawn;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import quarterlight.visit.photo.Photo;

/**
 * An outline or a note as one row of its table: the cells by column. The column with the geometry is {@code outline} of traces (WKT) and {@code points} of
 * notes. Immutable.
 *
 * @param table {@code traces} or {@code notes}
 * @param number of the row in its visit
 * @param cells filled cells by column, as a table writes them
 * @param photo that it is drawn on
 */
public record DrawnRow(String table, long number, Map<String, String> cells, Photo photo) {
    static final String TRACES = "traces";
    static final String NOTES = "notes";
    static final String OUTLINE = "outline";
    static final String POINTS = "points";

    public DrawnRow {
        Objects.requireNonNull(table, "table");
        Objects.requireNonNull(photo, "photo");
        cells = Map.copyOf(cells);
    }

    /** What it is called where each thing needs a name of its own: {@code traces-3}. */
    String id() {
        return table + "-" + number;
    }

    DrawnShape shape() {
        return DrawnShape.of(table, cells);
    }

    /** What kind of outline or note it is. */
    String kind() {
        return cells.getOrDefault(table.equals(TRACES) ? "kind" : "shape", table);
    }

    /** What stands beside it in words. */
    Optional<String> words() {
        return Optional.ofNullable(cells.get(table.equals(TRACES) ? "note" : "text"));
    }

    Optional<String> zone() {
        return Optional.ofNullable(cells.get("zone"));
    }

    /** The cells that a geometry does not tell, in the order of their names. */
    Map<String, String> beside() {
        Map<String, String> rest = new LinkedHashMap<>();
        cells.keySet().stream()
                .sorted()
                .filter(column -> !column.equals(OUTLINE) && !column.equals(POINTS))
                .forEach(column -> rest.put(column, cells.get(column)));
        if (shape().isBox()) {
            rest.put(POINTS, cells.get(POINTS));
        }
        return rest;
    }
}
