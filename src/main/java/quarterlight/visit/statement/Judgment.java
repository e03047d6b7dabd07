package quarterlight.visit.statement;

import java.util.Locale;
import quarterlight.units.Worded;

/** How a claim stands against what the visit found. */
public enum Judgment implements Worded {
    SUPPORTED,
    CONTRADICTED,
    OPEN;

    @Override
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
