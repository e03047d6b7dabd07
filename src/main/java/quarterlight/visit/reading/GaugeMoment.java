package quarterlight.visit.reading;

import quarterlight.units.Worded;

/** When a gauge check was made, relative to the readings. */
public enum GaugeMoment implements Worded {
    BEFORE,
    AFTER
}
