package quarterlight.ui.kit.place;

import java.util.Objects;
import quarterlight.car.ZoneId;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.row.RecordKind;

/** What the grounds are asked of: all that is said of a zone, one row, or one matter. Immutable. */
public sealed interface Subject {
    /** Every number and verdict of a zone. */
    record OfZone(ZoneId zone) implements Subject {
        public OfZone {
            Objects.requireNonNull(zone, "zone");
        }
    }

    /** What a row says, and what is concluded from it. */
    record OfRow(RecordKind<?> kind, RecordId row) implements Subject {
        public OfRow {
            Objects.requireNonNull(kind, "kind");
            Objects.requireNonNull(row, "row");
        }
    }

    /** One thing that matters, by its id. */
    record OfMatter(String id) implements Subject {
        public OfMatter {
            Objects.requireNonNull(id, "id");
        }
    }
}
