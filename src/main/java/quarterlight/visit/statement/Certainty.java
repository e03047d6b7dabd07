package quarterlight.visit.statement;

import java.util.Locale;
import quarterlight.units.Worded;

/** How certain a statement is. */
public enum Certainty implements Worded {
    SURE,
    LIKELY,
    GUESS;

    @Override
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
