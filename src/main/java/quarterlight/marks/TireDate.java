package quarterlight.marks;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The week in which a tire was made, from the last group of its identification number.
 * <p>Source: 49 CFR 574.5: week 01 is the first full calendar week, weeks run from Sunday to Saturday, the last week may hold up
 * to six days of the next year; four digits (week, year) since 2000, three (week, last digit of the year) before. These are not
 * the weeks of ISO 8601.
 */
final class TireDate {
    private static final Pattern LAST_GROUP = Pattern.compile("(?:^|.*[^0-9])(\\d{2})(\\d{1,2})$", Pattern.DOTALL);
    private static final String PATTERN = "tire-week";

    private TireDate() {}

    /** All weeks it can mean: one for four digits; the seventies, eighties and nineties for three. Empty if there is no such week. */
    static List<DateCandidate> read(String text) {
        Matcher m = LAST_GROUP.matcher(text.strip());
        if (!m.matches()) {
            return List.of();
        }
        int week = Integer.parseInt(m.group(1));
        int year = Integer.parseInt(m.group(2));
        Stream<Integer> years =
                m.group(2).length() == 2 ? Stream.of(2000 + year) : Stream.of(1970 + year, 1980 + year, 1990 + year);
        return years.flatMap(y -> week(y, week).stream()).toList();
    }

    static Optional<DateCandidate> week(int year, int week) {
        LocalDate first = LocalDate.of(year, 1, 1).with(TemporalAdjusters.nextOrSame(DayOfWeek.SUNDAY));
        LocalDate sunday = first.plusWeeks(week - 1L);
        return week >= 1 && sunday.getYear() == year
                ? Optional.of(new DateCandidate(sunday, sunday.plusDays(6), PATTERN))
                : Optional.empty();
    }
}
