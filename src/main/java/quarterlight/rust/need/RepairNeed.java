package quarterlight.rust.need;

import quarterlight.units.Worded;

/** What a zone needs, from least to most. */
public enum RepairNeed implements Worded {
    NONE,
    /** Cleaned, primed and painted; the metal is sound. */
    REFINISH,
    /** Metal let in. */
    PATCH,
    /** The panel or part exchanged. */
    REPLACE,
    /** A zone that carries load has lost metal: to be judged by a licensed person. */
    STRUCTURAL
}
