package quarterlight.visit.statement;

import java.util.Locale;
import quarterlight.units.Worded;

/** Who claims something of the car. */
public enum Claimant implements Worded {
    SELLER,
    OWNER,
    PAPERS,
    OTHER;

    @Override
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
