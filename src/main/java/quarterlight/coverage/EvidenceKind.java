package quarterlight.coverage;

import java.util.Locale;
import quarterlight.units.Worded;

/** A kind of evidence that a visit must bring. */
public enum EvidenceKind implements Worded {
    /** Kept photos (or film moments) pinned to the zone. */
    PHOTO,
    /** Spots measured with the gauge, those without metal and beyond the range too. */
    SPOTS,
    /** A look for rust: a rust trace, or the statement that there is none. */
    RUST,
    /** A mark that says which car it is: a vehicle number or an identity plate. */
    IDENTITY_MARK,
    /** Photos of one identity mark, as views of their own. */
    MARK_VIEWS;

    @Override
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
