package quarterlight.compare.matter;

import java.util.Objects;
import java.util.Optional;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.statement.Severity;

/**
 * What one car shows of a matter.
 *
 * @param text one sentence or more, never blank
 * @param photo what shows it best
 * @param severity of what was found; empty for the other classes, and where what was found has no severity of its own
 */
public record Cell(CellClass kind, String text, Optional<PhotoId> photo, Optional<Severity> severity) {
    public Cell {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(photo, "photo");
        Objects.requireNonNull(severity, "severity");
        if (text.isBlank()) {
            throw new IllegalArgumentException("a cell says something");
        }
    }

    static Cell of(CellClass kind, String text) {
        return new Cell(kind, text, Optional.empty(), Optional.empty());
    }

    static Cell of(CellClass kind, String text, Optional<PhotoId> photo) {
        return new Cell(kind, text, photo, Optional.empty());
    }

    boolean is(CellClass other) {
        return kind == other;
    }
}
