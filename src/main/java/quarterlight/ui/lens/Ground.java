package quarterlight.ui.lens;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import quarterlight.car.ZoneId;
import quarterlight.ui.kit.place.ChangedRows;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.row.RecordKind;

/**
 * One thing that something rests on. Immutable.
 *
 * @param head what it is, in a word or two
 * @param text what it says, in full sentences
 * @param rule the rule or source by which it counts; empty for what was seen or typed
 * @param where its rows, zones and photos in the window
 * @param outline the part of the first photo that it is about; empty for the whole photo
 */
record Ground(String head, String text, String rule, ChangedRows where, Optional<Outline> outline) {
    Ground {
        Objects.requireNonNull(head, "head");
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(rule, "rule");
        Objects.requireNonNull(where, "where");
        Objects.requireNonNull(outline, "outline");
    }

    /** The photo that shows it best. */
    Optional<PhotoId> photo() {
        return where.photos().stream().findFirst();
    }

    /** Rows of a kind with what they are about. */
    static ChangedRows at(RecordKind<?> kind, List<RecordId> rows, Set<ZoneId> zones, List<PhotoId> photos) {
        return new ChangedRows(Optional.of(kind), rows, zones, photos);
    }
}
