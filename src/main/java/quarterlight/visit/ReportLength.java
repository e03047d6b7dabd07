package quarterlight.visit;

import quarterlight.units.Worded;

/** How much of the evidence the report lays out. */
public enum ReportLength implements Worded {
    FULL,
    SHORT
}
