package quarterlight.marks.judge;

import java.util.Locale;
import quarterlight.units.Worded;

/** Whether a mark fits the car. */
public enum Verdict implements Worded {
    FITS,
    TOO_LATE,
    UNUSUALLY_EARLY,
    MALFORMED,
    CANNOT_TELL,
    NOT_APPLICABLE;

    @Override
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
