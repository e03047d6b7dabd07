package quarterlight.visit.mark;

import java.util.Locale;
import quarterlight.units.Worded;

/** Where a figure of the odometer comes from. */
public enum OdometerSource implements Worded {
    READ,
    PAPERS,
    TOLD;

    @Override
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
