package quarterlight.car;

import quarterlight.units.Worded;

/** The kind of finish the car left the factory with; sets the prior of the factory level. */
public enum FinishProfile implements Worded {
    LACQUER,
    ENAMEL,
    MODERN,
    UNKNOWN
}
