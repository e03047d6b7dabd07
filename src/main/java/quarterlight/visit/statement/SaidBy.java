package quarterlight.visit.statement;

import java.util.Locale;
import quarterlight.units.Worded;

/** Who says what a statement says. */
public enum SaidBy implements Worded {
    INSPECTOR,
    SELLER,
    OWNER,
    PAPERS,
    OTHER;

    @Override
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
