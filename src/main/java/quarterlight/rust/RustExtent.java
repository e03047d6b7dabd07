package quarterlight.rust;

import quarterlight.units.Worded;

/** How far rust goes in a zone that was looked at: none seen; up to 1 %; up to 10 %; more, or any hole. */
public enum RustExtent implements Worded {
    NONE,
    LIGHT,
    MODERATE,
    HEAVY
}
