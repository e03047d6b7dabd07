package quarterlight.visit;

import java.util.Locale;
import quarterlight.units.Worded;

/** What a statement says of a zone. */
public enum StatementKind implements Worded {
    AS_BUILT,
    SOUND,
    NO_RUST,
    REPLACED,
    REPAIRED,
    DAMAGED,
    WORN,
    PITTED,
    LEAKING,
    MISSING,
    DOES_NOT_BELONG,
    ADDED_COATING,
    NOT_LOOKED_AT;

    @Override
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
