package quarterlight.words.clash;

import quarterlight.units.Worded;

/** What two testimonies contradict each other about. */
public enum About implements Worded {
    ORIGIN,
    CONDITION,
    FINISH,
    FUNCTION,
    MARK,
    ODOMETER,
    THICKNESS,
    SIGN
}
