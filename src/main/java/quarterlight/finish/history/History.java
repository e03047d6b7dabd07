package quarterlight.finish.history;

import quarterlight.units.Worded;

/** What can have happened to the finish of a panel. */
public enum History implements Worded {
    /** The finish the car left the factory with, and nothing on top. */
    FACTORY,
    /** Refinished over an earlier finish: at least one more coat. */
    OVER,
    /** Stripped and refinished: the thickness says nothing of the factory level. */
    STRIPPED,
    /** Refinished over a repair: body filler on part of the panel. */
    FILLER
}
