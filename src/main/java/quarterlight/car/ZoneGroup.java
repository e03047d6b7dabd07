package quarterlight.car;

import quarterlight.units.Worded;

/** The groups of zones in the zone table. */
public enum ZoneGroup implements Worded {
    OUTER,
    COVERING,
    TRIM,
    GLASS,
    WHEELS,
    EDGES,
    BAY,
    UNDER,
    LOAD,
    CABIN,
    RECORD
}
