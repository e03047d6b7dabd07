package quarterlight.car;

import quarterlight.units.Worded;

/** What a zone is made of. */
public enum Substrate implements Worded {
    STEEL,
    ALUMINUM,
    FIBERGLASS,
    PLASTIC,
    WOOD
}
