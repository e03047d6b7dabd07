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
public record MatterCell(CellClass kind, String text, Optional<PhotoId> photo, Optional<Severity> severity) {
    public MatterCell {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(photo, "photo");
        Objects.requireNonNull(severity, "severity");
        if (text.isBlank()) {
            throw new IllegalArgumentException("a cell says something");
        }
    }

    static MatterCell of(CellClass kind, String text) {
        return new MatterCell(kind, text, Optional.empty(), Optional.empty());
    }

    static MatterCell of(CellClass kind, String text, Optional<PhotoId> photo) {
        return new MatterCell(kind, text, photo, Optional.empty());
    }

    boolean is(CellClass other) {
        return kind == other;
    }
}
