package quarterlight.thickness.spot;

import quarterlight.units.Worded;

/** What the gauge gave at one place. */
public enum SpotKind implements Worded {
    VALUE,
    OVER,
    NO_METAL
}
