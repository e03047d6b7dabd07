package quarterlight.visit.mark;

import quarterlight.units.Worded;

/** The kinds of marks. */
public enum MarkKind implements Worded {
    VIN,
    PLATE,
    STAMP,
    TAG,
    CASTING,
    LABEL,
    TIRE,
    GLASS,
    /** A number or date on a title, registration, build sheet, invoice. */
    PAPER
}
