package quarterlight.diagram.file;

import java.util.Objects;
import java.util.Optional;
import quarterlight.car.View;
import quarterlight.car.ZoneId;
import quarterlight.units.Worded;

/**
 * One thing a body diagram lacks or has wrong.
 *
 * @param text a sentence for the user without full stop
 */
public record DiagramFinding(Kind kind, Optional<View> view, Optional<ZoneId> zone, String text) {
    /** What is wrong. */
    public enum Kind implements Worded {
        VIEW_MISSING,
        ZONE_MISSING,
        ZONE_UNKNOWN,
        NO_AREA,
        NOT_CLOSED,
        CROSSES_ITSELF,
        OUTSIDE_VIEW,
        BAD_ID,
        OVERLAP,
        UNCOVERED,
        NOT_CONNECTED
    }

    public DiagramFinding {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(view, "view");
        Objects.requireNonNull(zone, "zone");
        Objects.requireNonNull(text, "text");
    }
}
