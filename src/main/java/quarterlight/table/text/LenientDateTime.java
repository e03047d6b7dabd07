package quarterlight.table.text;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quarterlight.units.Worded;

/** Dates and times as other programs write them: with dots or slashes, in either order, with a twelve-hour clock. Pure functions. */
public final class LenientDateTime {
    private static final Pattern DATE = Pattern.compile("(\\d{1,4})[./-](\\d{1,2})[./-](\\d{2,4})\\.?");
    private static final Pattern TIME =
            Pattern.compile("(\\d{1,2})[:.](\\d{2})(?:[:.](\\d{2})(?:[.,](\\d{1,9}))?)?\\s*([AaPp])?\\.?[Mm]?\\.?");
    private static final int CENTURY = 2000;

    /** Which of the three numbers of a date stands first. */
    public enum Order implements Worded {
        YEAR_FIRST,
        DAY_FIRST,
        MONTH_FIRST
    }

    private LenientDateTime() {}

    /**
     * The order that all dates of a column allow: the year first if the first number has four digits, the day first if one of them is above
     * 12 or dots stand between, else the month, as is usual in the United States.
     */
    public static Order orderOf(List<String> cells) {
        boolean dots = false;
        for (String cell : cells) {
            Matcher date = DATE.matcher(cell.strip().split("[ T]", 2)[0]);
            if (date.matches()) {
                if (date.group(1).length() > 2) {
                    return Order.YEAR_FIRST;
                }
                if (Integer.parseInt(date.group(1)) > 12) {
                    return Order.DAY_FIRST;
                }
                if (Integer.parseInt(date.group(2)) > 12) {
                    return Order.MONTH_FIRST;
                }
                dots |= cell.strip().indexOf('.') >= 0 && cell.strip().indexOf('/') < 0;
            }
        }
        return dots ? Order.DAY_FIRST : Order.MONTH_FIRST;
    }

    /**
     * Reads a date with a time, or a bare time of a day that is known otherwise.
     *
     * @param day the day of a bare time; without one it is not read
     * @param zone to whose local time a moment with an offset is brought
     */
    public static Optional<LocalDateTime> parse(String text, Order order, Optional<LocalDate> day, ZoneId zone) {
        String cell = text.replace('\u00a0', ' ').replace('\u202f', ' ').strip();
        Optional<LocalDateTime> iso = DateTimeText.parse(cell, zone);
        if (iso.isPresent()) {
            return iso;
        }
        String[] halves = cell.split("[ T,]+", 2);
        Optional<LocalDate> date = date(halves[0], order);
        if (date.isPresent()) {
            return halves.length == 2 ? time(halves[1]).map(date.get()::atTime) : Optional.empty();
        }
        return day.flatMap(known -> time(cell).map(known::atTime));
    }

    /** Reads a date; a year of two digits is one of this century. */
    public static Optional<LocalDate> date(String text, Order order) {
        Matcher date = DATE.matcher(text.strip());
        if (!date.matches()) {
            return Optional.empty();
        }
        int a = Integer.parseInt(date.group(1));
        int b = Integer.parseInt(date.group(2));
        int c = Integer.parseInt(date.group(3));
        try {
            return Optional.of(
                    switch (date.group(1).length() > 2 ? Order.YEAR_FIRST : order) {
                        case YEAR_FIRST -> LocalDate.of(a, b, c);
                        case DAY_FIRST -> LocalDate.of(year(c), b, a);
                        case MONTH_FIRST -> LocalDate.of(year(c), a, b);
                    });
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private static int year(int number) {
        return number < 100 ? CENTURY + number : number;
    }

    private static Optional<LocalTime> time(String text) {
        Matcher time = TIME.matcher(text.strip());
        if (!time.matches()) {
            return Optional.empty();
        }
        int hour = Integer.parseInt(time.group(1));
        if (time.group(5) != null) {
            if (hour < 1 || hour > 12) {
                return Optional.empty();
            }
            hour = hour % 12 + (time.group(5).equalsIgnoreCase("p") ? 12 : 0);
        }
        try {
            int second = time.group(3) == null ? 0 : Integer.parseInt(time.group(3));
            LocalTime whole = LocalTime.of(hour, Integer.parseInt(time.group(2)), second);
            String fraction = time.group(4) == null ? "0" : time.group(4);
            return Optional.of(whole.withNano(Integer.parseInt((fraction + "000000000").substring(0, 9))));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
