package quarterlight.words;

import java.util.Locale;
import quarterlight.units.Worded;

/** A side of what a draft says; which of them stand depends on its kind. */
public enum Facet implements Worded {
    ORIGIN,
    CONDITION,
    ITEM,
    RESULT,
    PART,
    KIND,
    TEXT,
    EXPECTED,
    LOW_UM,
    HIGH_UM,
    SIGN,
    SEEN,
    VALUE,
    UNIT,
    SAID_BY,
    CERTAINTY,
    SIZE;

    @Override
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
