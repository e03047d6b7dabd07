package quarterlight.marks;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quarterlight.car.ZoneId;
import quarterlight.units.Worded;
import quarterlight.visit.pin.RecordId;

/**
 * Something that does not go together with the car as claimed: a question for the seller, not a proof.
 *
 * @param what the part or feature it is about
 * @param rows the marks it rests on; empty for a feature
 * @param sentence what does not go together, with a full stop
 */
public record Contradiction(Kind kind, String what, Optional<ZoneId> zone, List<RecordId> rows, String sentence) {
    /** In what it lies. */
    public enum Kind implements Worded {
        /** A part dated after the build, or long before it. */
        DATE,
        /** Two dates in an order that cannot be. */
        ORDER,
        /** Numbers that must match and do not, or a number that breaks its rule. */
        NUMBER,
        /** A feature that cars of this build do not have, or lack of one that they have. */
        FEATURE
    }

    public Contradiction {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(what, "what");
        Objects.requireNonNull(zone, "zone");
        Objects.requireNonNull(sentence, "sentence");
        rows = List.copyOf(rows);
    }
}
