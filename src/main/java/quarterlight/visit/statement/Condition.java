package quarterlight.visit.statement;

import java.util.Locale;
import quarterlight.units.Worded;

/** How a part or zone is; or that it was not looked at. */
public enum Condition implements Worded {
    SOUND,
    PRESENT,
    NO_RUST,
    SURFACE_RUST,
    SCALE,
    PITTED,
    RUSTED_THROUGH,
    WORN,
    DAMAGED,
    LEAKING,
    MISSING,
    REPAIRED,
    REFINISHED,
    FILLER,
    REPLATED,
    ADDED_COATING,
    BLOCKED,
    NOISE,
    SMELL,
    NOT_LOOKED_AT;

    @Override
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
