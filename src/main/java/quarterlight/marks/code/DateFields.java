package quarterlight.marks.code;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Year;
import java.time.YearMonth;
import java.time.temporal.IsoFields;
import java.time.temporal.TemporalAdjusters;
import java.util.Optional;

/** What has been read of a date code so far; 0 stands for a field not read. Immutable. */
record DateFields(int year, int month, int day, int dayOfYear, int week, int quarter) {
    static final DateFields NONE = new DateFields(0, 0, 0, 0, 0, 0);

    DateFields withYear(int value) {
        return new DateFields(value, month, day, dayOfYear, week, quarter);
    }

    DateFields withMonth(int value) {
        return new DateFields(year, value, day, dayOfYear, week, quarter);
    }

    DateFields withDay(int value) {
        return new DateFields(year, month, value, dayOfYear, week, quarter);
    }

    DateFields withDayOfYear(int value) {
        return new DateFields(year, month, day, value, week, quarter);
    }

    DateFields withWeek(int value) {
        return new DateFields(year, month, day, dayOfYear, value, quarter);
    }

    DateFields withQuarter(int value) {
        return new DateFields(year, month, day, dayOfYear, week, value);
    }

    /** The days these fields can mean; empty for a day, week or quarter that does not exist. */
    Optional<DateCandidate> candidate(String pattern) {
        try {
            if (week > 0) {
                return weekOf(pattern);
            }
            if (quarter > 0) {
                LocalDate first = LocalDate.of(year, 3 * quarter - 2, 1);
                return Optional.of(new DateCandidate(first, first.plusMonths(3).minusDays(1), pattern));
            }
            if (dayOfYear > 0) {
                LocalDate date = LocalDate.ofYearDay(year, dayOfYear);
                return Optional.of(new DateCandidate(date, date, pattern));
            }
            if (day > 0) {
                LocalDate date = LocalDate.of(year, month, day);
                return Optional.of(new DateCandidate(date, date, pattern));
            }
            if (month == 0) {
                return Optional.of(new DateCandidate(LocalDate.of(year, 1, 1), LocalDate.of(year, 12, 31), pattern));
            }
            YearMonth whole = YearMonth.of(year, month);
            return Optional.of(new DateCandidate(whole.atDay(1), whole.atEndOfMonth(), pattern));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private Optional<DateCandidate> weekOf(String pattern) {
        LocalDate inFirst = Year.of(year).atMonth(1).atDay(4);
        LocalDate monday = inFirst.with(TemporalAdjusters.previousOrSame(java.time.DayOfWeek.MONDAY))
                .plusWeeks(week - 1L);
        boolean exists = monday.plusDays(3).get(IsoFields.WEEK_BASED_YEAR) == year;
        return exists ? Optional.of(new DateCandidate(monday, monday.plusDays(6), pattern)) : Optional.empty();
    }
}
