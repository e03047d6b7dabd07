package quarterlight.visit.trial;

import java.util.Locale;
import quarterlight.units.Worded;

/** What came of a trial: how a function behaved, how much was observed, or that a value was measured. */
public enum TrialResult implements Worded {
    WORKS,
    WORKS_WITH_A_FAULT,
    BYPASSED,
    DOES_NOT,
    NOT_TRIED,
    NOT_FITTED,
    NONE,
    SOME,
    HEAVY,
    MEASURED;

    @Override
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
