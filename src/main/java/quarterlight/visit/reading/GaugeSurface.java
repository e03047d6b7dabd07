package quarterlight.visit.reading;

import quarterlight.units.Worded;

/** What the gauge was checked on. */
public enum GaugeSurface implements Worded {
    BARE,
    SHIM
}
