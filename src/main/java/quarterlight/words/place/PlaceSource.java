package quarterlight.words.place;

import quarterlight.units.Worded;

/** From where a place or its side is known. */
public enum PlaceSource implements Worded {
    /** Said in the clause itself. */
    NAMED,
    /** A word such as "the other one" that points at what was said before. */
    POINTED,
    /** The part has no side. */
    CENTRAL,
    /** The word stands in the plural and names no side. */
    PLURAL,
    /** Carried on from what was said before. */
    CARRIED,
    /** Nothing was said. */
    UNKNOWN
}
