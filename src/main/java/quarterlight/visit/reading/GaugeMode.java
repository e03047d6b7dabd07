package quarterlight.visit.reading;

import quarterlight.units.Worded;

/** The principle a gauge worked by: magnetic induction on steel, or eddy current on other metal. */
public enum GaugeMode implements Worded {
    MAGNETIC,
    EDDY
}
