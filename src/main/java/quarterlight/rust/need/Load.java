package quarterlight.rust.need;

import quarterlight.units.Worded;

/** What a zone does for the car, as far as a repair is concerned. */
public enum Load implements Worded {
    /** Carries engine, axles, suspension or the whole body by itself: any loss through the metal matters. */
    MAIN,
    /** Sheet that shares in the load: a small hole is let in, a wide loss weakens the body. */
    SHELL,
    /** A skin or bolted panel. */
    SKIN,
    /** Holds fuel or brake fluid under the car. */
    FLUID,
    /** Trim, glass, seats, dash and the like: no painted sheet metal. */
    FITTING
}
