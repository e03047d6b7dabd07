package quarterlight.marks.judge;

import static quarterlight.language.Sentences.say;

import quarterlight.marks.code.DateCandidate;
import quarterlight.units.Days;

/** Days and spans of days as sentences say them: {@code Mar 4, 1971}, {@code Mar 1971}, {@code 26 months}. */
public final class DateText {
    private static final double DAYS_OF_MONTH = 30.44;
    private static final double DAYS_OF_YEAR = 365.25;
    private static final int MAX_SAID_IN_DAYS = 90;
    private static final int MAX_SAID_IN_MONTHS = 1100;

    private DateText() {}

    public static String of(DateCandidate date) {
        return Days.span(date.from(), date.to());
    }

    public static String of(BuildWindow window) {
        return Days.span(window.first(), window.last());
    }

    /** A number of days in the unit that reads best: days up to 90, months up to three years, then years. */
    public static String span(long days) {
        if (days <= MAX_SAID_IN_DAYS) {
            return say("marks.span.days", days);
        }
        return days <= MAX_SAID_IN_MONTHS
                ? say("marks.span.months", Math.round(days / DAYS_OF_MONTH))
                : say("marks.span.years", Math.round(days / DAYS_OF_YEAR));
    }
}
