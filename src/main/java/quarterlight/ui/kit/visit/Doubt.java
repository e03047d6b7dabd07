package quarterlight.ui.kit.visit;

import java.util.Objects;
import java.util.Optional;
import quarterlight.coverage.Gap;
import quarterlight.ui.kit.place.ChangedRows;

/**
 * One thing that is still open. Immutable.
 *
 * @param where the row, photo or zone that it is about, as the window shows it
 * @param gap the evidence that is missing; empty if something else is open
 * @param sentence what is open, in one sentence
 */
public record Doubt(Station station, ChangedRows where, Optional<Gap> gap, String sentence) {
    public Doubt {
        Objects.requireNonNull(station, "station");
        Objects.requireNonNull(where, "where");
        Objects.requireNonNull(gap, "gap");
        Objects.requireNonNull(sentence, "sentence");
    }

    /** Whether both are about one matter, though what is said of it may have changed: the same row, the same gap, else the same words. */
    public boolean isAboutTheSameAs(Doubt other) {
        boolean samePlace = station == other.station && where.equals(other.where);
        boolean sameGap = gap.map(Gap::matter).equals(other.gap.map(Gap::matter));
        boolean named = gap.isPresent() || !where.rows().isEmpty();
        return samePlace && sameGap && (named || sentence.equals(other.sentence));
    }
}
