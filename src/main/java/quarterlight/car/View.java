package quarterlight.car;

import quarterlight.units.Worded;

/** One drawing of the body diagram. */
public enum View implements Worded {
    LEFT,
    RIGHT,
    FRONT,
    REAR,
    TOP,
    BAY,
    UNDER,
    CABIN
}
