package quarterlight.marks.code;

import java.time.LocalDate;
import java.util.Objects;

/**
 * One reading of a code as a date.
 *
 * @param from the first day it can mean
 * @param to the last day it can mean
 * @param pattern the pattern it was read by
 */
public record DateCandidate(LocalDate from, LocalDate to, String pattern) {
    public DateCandidate {
        Objects.requireNonNull(pattern, "pattern");
        if (to.isBefore(from)) {
            throw new IllegalArgumentException("the last day " + to + " lies before the first " + from);
        }
    }

    /** True if some day of it lies from {@code first} to {@code last}. */
    public boolean meets(LocalDate first, LocalDate last) {
        return !to.isBefore(first) && !from.isAfter(last);
    }
}
