package quarterlight.visit.mark;

import quarterlight.units.Worded;

/** The stage of making or selling at which a mark was put on. */
public enum MarkStage implements Worded {
    CAST,
    MACHINED,
    ASSEMBLED,
    FITTED,
    BUILT,
    SHIPPED,
    SOLD
}
