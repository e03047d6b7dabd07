package quarterlight.edit.spoken;

import java.util.Locale;
import quarterlight.words.Draft;

/** The words of a draft with their time, as they stand in the note of a row: {@code "Horn works" (0:41)}. No file is named, since it may be held back. */
public final class SpokenQuote {
    private SpokenQuote() {}

    static String of(Draft draft) {
        return "\"" + draft.words().strip() + "\" (" + clock(draft.atSeconds()) + ")";
    }

    /** Minutes and seconds, with hours where there are any. */
    public static String clock(double seconds) {
        long whole = (long) Math.floor(seconds);
        return whole < 3600
                ? String.format(Locale.ROOT, "%d:%02d", whole / 60, whole % 60)
                : String.format(Locale.ROOT, "%d:%02d:%02d", whole / 3600, whole / 60 % 60, whole % 60);
    }
}
