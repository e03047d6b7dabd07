package quarterlight.visit.statement;

import java.util.Locale;
import quarterlight.units.Worded;

/** How a statement is known. */
public enum Basis implements Worded {
    SEEN,
    MEASURED,
    TESTED,
    HEARD_OR_SMELLED,
    FROM_PAPERS,
    TOLD,
    NOT_ESTABLISHED;

    @Override
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
