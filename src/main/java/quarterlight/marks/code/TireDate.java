package quarterlight.marks.code;

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
 * the weeks of ISO 8601. A retread bears the date of its retreading.
 */
public final class TireDate {
    /** Name under which candidates of tires stand. */
    public static final String PATTERN = "tire-week";

    private static final Pattern LAST_GROUP = Pattern.compile("(?:^|.*[^0-9?])([0-9?]{3,4})$", Pattern.DOTALL);

    private TireDate() {}

    /**
     * All weeks it can mean, one completion for each way to fill in unread digits: one week for four digits; one each in the
     * seventies, eighties and nineties for three. Empty if there is no such week.
     */
    public static List<Completion> read(String text) {
        Matcher m = LAST_GROUP.matcher(text.strip());
        return m.matches() ? fill(m.group(1)).flatMap(TireDate::completion).toList() : List.of();
    }

    private static Stream<String> fill(String digits) {
        int at = digits.indexOf(UnreadLetter.LETTER);
        return at < 0
                ? Stream.of(digits)
                : "0123456789"
                        .chars()
                        .boxed()
                        .flatMap(c -> fill(digits.substring(0, at) + (char) c.intValue() + digits.substring(at + 1)));
    }

    private static Stream<Completion> completion(String digits) {
        int week = Integer.parseInt(digits.substring(0, 2));
        int year = Integer.parseInt(digits.substring(2));
        Stream<Integer> years =
                digits.length() == 4 ? Stream.of(2000 + year) : Stream.of(1970 + year, 1980 + year, 1990 + year);
        List<DateCandidate> weeks = years.flatMap(y -> week(y, week).stream()).toList();
        return weeks.isEmpty() ? Stream.empty() : Stream.of(new Completion(digits, weeks));
    }

    static Optional<DateCandidate> week(int year, int week) {
        LocalDate first = LocalDate.of(year, 1, 1).with(TemporalAdjusters.nextOrSame(DayOfWeek.SUNDAY));
        LocalDate sunday = first.plusWeeks(week - 1L);
        return week >= 1 && sunday.getYear() == year
                ? Optional.of(new DateCandidate(sunday, sunday.plusDays(6), PATTERN))
                : Optional.empty();
    }
}
