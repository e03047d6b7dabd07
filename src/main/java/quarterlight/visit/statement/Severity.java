package quarterlight.visit.statement;

import quarterlight.units.Worded;

/** How much a statement matters. */
public enum Severity implements Worded {
    NOTE,
    MINOR,
    MAJOR,
    GRAVE
}
