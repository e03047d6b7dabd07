package quarterlight.words;

import quarterlight.units.Worded;

/** What a draft would become. */
public enum DraftKind implements Worded {
    STATEMENT,
    TRIAL,
    MARK,
    THICKNESS,
    SIGN,
    ODOMETER,
    NOT_LOOKED_AT,
    CLAIM,
    GAUGE
}
