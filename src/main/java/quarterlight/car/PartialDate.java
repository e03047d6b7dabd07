package quarterlight.car;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Year;
import java.time.YearMonth;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quarterlight.units.Days;

/**
 * A date known to the day, the month or the year: {@code 1971-04-12}, {@code 1971-04}, {@code 1971}.
 *
 * @param first the first day it can be
 * @param last the last day it can be
 * @param text as written, ISO 8601 with reduced precision
 */
public record PartialDate(LocalDate first, LocalDate last, String text) {
    private static final Pattern FORM = Pattern.compile("(\\d{4})(?:-(\\d{2})(?:-(\\d{2}))?)?");

    public PartialDate {
        if (last.isBefore(first)) {
            throw new IllegalArgumentException("the last day " + last + " lies before the first " + first);
        }
    }

    /** Reads a day, month or year; empty if the text is none or names a day that does not exist. */
    public static Optional<PartialDate> parse(String text) {
        Matcher m = FORM.matcher(text.strip());
        if (!m.matches()) {
            return Optional.empty();
        }
        try {
            int year = Integer.parseInt(m.group(1));
            if (m.group(2) == null) {
                Year y = Year.of(year);
                return Optional.of(new PartialDate(y.atDay(1), y.atDay(y.length()), m.group()));
            }
            YearMonth month = YearMonth.of(year, Integer.parseInt(m.group(2)));
            if (m.group(3) == null) {
                return Optional.of(new PartialDate(month.atDay(1), month.atEndOfMonth(), m.group()));
            }
            LocalDate day = month.atDay(Integer.parseInt(m.group(3)));
            return Optional.of(new PartialDate(day, day, m.group()));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    /** As people read it: {@code Apr 12, 1971}, {@code Apr 1971}, {@code 1971}. */
    public String said() {
        return Days.span(first, last);
    }

    @Override
    public String toString() {
        return text;
    }
}
