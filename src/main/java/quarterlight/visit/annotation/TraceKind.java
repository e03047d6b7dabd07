package quarterlight.visit.annotation;

import quarterlight.units.Worded;

/** What a trace outlines. */
public enum TraceKind implements Worded {
    SURFACE,
    SCALE,
    PITTING,
    HOLE,
    CRACK,
    ROT,
    DAMAGE
}
