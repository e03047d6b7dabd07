package quarterlight.visit.mark;

import java.util.Locale;
import quarterlight.units.Worded;

/** The unit of an odometer. */
public enum DistanceUnit implements Worded {
    MI,
    KM;

    @Override
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
