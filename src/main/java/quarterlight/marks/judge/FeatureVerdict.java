package quarterlight.marks.judge;

import java.util.Locale;
import quarterlight.units.Worded;

/** Whether a feature goes with the car's build. */
public enum FeatureVerdict implements Worded {
    BELONGS,
    DOES_NOT_BELONG,
    MISSING,
    RIGHTLY_ABSENT,
    CANNOT_TELL;

    @Override
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
