package quarterlight.compare.matter;

import java.util.Locale;
import quarterlight.units.Worded;

/** What a buyer may care about. */
public enum Concern implements Worded {
    /** Numbers, dates, parts and finish as built. */
    ORIGINALITY,
    /** Rust and repairs of what carries load. */
    STRUCTURE,
    /** Whether it starts, runs, stops and steers. */
    RUNNING_AND_DRIVING,
    /** Paint, filler, trim. */
    FINISH,
    /** Claims, papers and mileage. */
    DOCUMENTS;

    @Override
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
