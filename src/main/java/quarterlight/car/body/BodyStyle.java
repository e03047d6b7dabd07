package quarterlight.car.body;

import quarterlight.units.Worded;

/** The kinds of body that have a diagram. */
public enum BodyStyle implements Worded {
    COUPE,
    SEDAN,
    CONVERTIBLE,
    WAGON,
    PICKUP
}
