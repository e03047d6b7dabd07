package quarterlight.coverage;

import quarterlight.units.Worded;

/** Groups of functions to try, in the order in which they are tried. */
public enum TrialGroup implements Worded {
    ENGINE,
    ELECTRICS,
    BRAKES,
    BODY,
    CABIN,
    RUNNING
}
