package quarterlight.visit;

import java.util.Locale;
import quarterlight.units.Worded;

/** How a function that was tried behaved. */
public enum TrialResult implements Worded {
    WORKS,
    WORKS_WITH_A_FAULT,
    BYPASSED,
    DOES_NOT,
    NOT_TRIED,
    NOT_FITTED;

    @Override
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
