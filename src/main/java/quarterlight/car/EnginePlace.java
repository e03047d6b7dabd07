package quarterlight.car;

import quarterlight.units.Worded;

/** Where the engine sits. */
public enum EnginePlace implements Worded {
    FRONT,
    REAR
}
