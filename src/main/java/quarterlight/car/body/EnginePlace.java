package quarterlight.car.body;

import quarterlight.units.Worded;

/** Where the engine sits. */
public enum EnginePlace implements Worded {
    FRONT,
    REAR
}
