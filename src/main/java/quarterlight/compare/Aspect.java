package quarterlight.compare;

import quarterlight.units.Worded;

/** In what two zones are set side by side. */
public enum Aspect implements Worded {
    THICKNESS,
    REFINISH,
    REPAIR,
    RUST,
    NEED,
    DATES
}
