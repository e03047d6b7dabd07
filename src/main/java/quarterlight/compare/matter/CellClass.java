package quarterlight.compare.matter;

import java.util.Locale;
import quarterlight.units.Worded;

/** What a car shows of a matter. */
public enum CellClass implements Worded {
    /** It is there, or something of its kind. */
    FOUND,
    /** Looked at, measured or tried, and nothing of it is there. */
    CLEAN,
    /** Nobody looked, or the look cannot be relied on. */
    NOT_LOOKED_AT,
    /** The car has no such place, part or claim. */
    NOT_ON_THIS_CAR;

    @Override
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
