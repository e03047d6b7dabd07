package quarterlight.units;

import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAccessor;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Dates as people read them, {@code Apr 18, 2026}; files carry ISO 8601. */
public final class Days {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("MMM d, uuuu", Locale.US);
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMM uuuu", Locale.US);

    private Days() {}

    public static String day(TemporalAccessor date) {
        return DAY.format(date);
    }

    public static String month(TemporalAccessor date) {
        return MONTH.format(date);
    }

    /** The English names of the months in small letters, January first. */
    public static List<String> monthNames() {
        return Stream.of(Month.values())
                .map(month -> month.name().toLowerCase(Locale.ROOT))
                .toList();
    }

    /** A day, a whole month, a whole year, or from one day or month to another: {@code Aug 1970 to Jul 1971}. */
    public static String span(LocalDate first, LocalDate last) {
        if (first.equals(last)) {
            return day(first);
        }
        boolean wholeMonths = first.getDayOfMonth() == 1 && last.getDayOfMonth() == last.lengthOfMonth();
        if (!wholeMonths) {
            return day(first) + " to " + day(last);
        }
        if (YearMonth.from(first).equals(YearMonth.from(last))) {
            return month(first);
        }
        boolean wholeYear = first.getDayOfYear() == 1 && last.equals(first.withDayOfYear(first.lengthOfYear()));
        return wholeYear ? Integer.toString(first.getYear()) : month(first) + " to " + month(last);
    }
}
