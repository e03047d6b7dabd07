package quarterlight.marks;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import quarterlight.marks.code.DateCandidate;

/** Days and spans of days as sentences say them: {@code March 4, 1971}, {@code March 1971}, {@code 26 months}. */
public final class DateText {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("MMMM d, uuuu", Locale.US);
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMMM uuuu", Locale.US);
    private static final double DAYS_OF_MONTH = 30.44;
    private static final double DAYS_OF_YEAR = 365.25;
    private static final int MOST_SAID_IN_DAYS = 90;
    private static final int MOST_SAID_IN_MONTHS = 1100;

    private DateText() {}

    /** A day, a whole month, a whole year, or from one day to another. */
    public static String of(LocalDate from, LocalDate to) {
        if (from.equals(to)) {
            return DAY.format(from);
        }
        if (from.getDayOfMonth() == 1 && to.equals(YearMonth.from(from).atEndOfMonth())) {
            return MONTH.format(from);
        }
        if (from.getDayOfYear() == 1 && to.equals(from.withDayOfYear(from.lengthOfYear()))) {
            return Integer.toString(from.getYear());
        }
        boolean wholeMonths = from.getDayOfMonth() == 1 && to.getDayOfMonth() == to.lengthOfMonth();
        return wholeMonths
                ? MONTH.format(from) + " to " + MONTH.format(to)
                : DAY.format(from) + " to " + DAY.format(to);
    }

    public static String of(DateCandidate date) {
        return of(date.from(), date.to());
    }

    public static String of(BuildWindow window) {
        return of(window.first(), window.last());
    }

    /** A number of days in the unit that reads best: days up to 90, months up to three years, then years. */
    public static String span(long days) {
        if (days <= MOST_SAID_IN_DAYS) {
            return days + (days == 1 ? " day" : " days");
        }
        return days <= MOST_SAID_IN_MONTHS
                ? Math.round(days / DAYS_OF_MONTH) + " months"
                : Math.round(days / DAYS_OF_YEAR) + " years";
    }
}
