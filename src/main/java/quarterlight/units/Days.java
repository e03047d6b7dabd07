package quarterlight.units;

import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAccessor;
import java.util.Locale;

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
}
