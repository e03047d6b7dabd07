package quarterlight.marks;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A small readable pattern for date codes. In the form, a word in braces is a field and everything else stands for itself:
 * <ul>
 *   <li>{@code {y}} last digit of the year, {@code {yy}} last two, {@code {yyyy}} all four
 *   <li>{@code {M}} a month letter, A to M without I, {@code {L}} a month letter, A to L with I
 *   <li>{@code {m}} month in one or two digits, {@code {mm}} in two, {@code {mon}} its first three letters or its whole name
 *   <li>{@code {d}} day in one or two digits, {@code {dd}} in two
 *   <li>{@code {ww}} week of the year in two digits (ISO 8601), {@code {q}} quarter
 * </ul>
 * Blanks, hyphens, slashes and points between fields may be written or left out where the form has a blank.
 *
 * @param name by which the {@code pattern} column of a mark asks for it
 * @param example a text that it reads
 * @param reading what the example means, in words
 */
public record DatePattern(String name, String form, String example, String reading) {
    /** The patterns the program knows; common practice, without a published source. */
    public static final List<DatePattern> KNOWN = List.of(
            new DatePattern("year-letter-day", "{y}{M}{d}", "6B10", "10 February of a year ending in 6"),
            new DatePattern("letter-day-year", "{L}{d}{y}", "F105", "10 June of a year ending in 5"),
            new DatePattern("letter-day-year-skipping-i", "{M}{d}{y}", "L105", "10 November of a year ending in 5"),
            new DatePattern("letter-day-two-digit-year", "{L}{d}{yy}", "A257", "2 January 1957"),
            new DatePattern("day-month-year", "{d} {m} {yy}", "12-4-71", "12 April 1971"),
            new DatePattern("month-day-year", "{m} {d} {yy}", "4-12-71", "12 April 1971"),
            new DatePattern("iso-day", "{yyyy}-{mm}-{dd}", "1971-04-12", "12 April 1971"),
            new DatePattern("day-month-name-year", "{d} {mon} {yy}", "12 APR 71", "12 April 1971"),
            new DatePattern("week-year", "{ww} {yy}", "15 71", "week 15 of 1971"),
            new DatePattern("year-week", "{yy}w{ww}", "71W15", "week 15 of 1971"),
            new DatePattern("year-quarter", "{yy}q{q}", "71Q2", "second quarter of 1971"),
            new DatePattern("quarter-year", "{q}q{yy}", "2Q71", "second quarter of 1971"),
            new DatePattern("month-year", "{m} {yy}", "4/71", "April 1971"),
            new DatePattern("month-long-year", "{m} {yyyy}", "4/1971", "April 1971"),
            new DatePattern("month-name-year", "{mon} {yyyy}", "APRIL 1971", "April 1971"),
            new DatePattern("month-name-short-year", "{mon} {yy}", "APR 71", "April 1971"));

    public DatePattern {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(form, "form");
    }

    public static Optional<DatePattern> named(String name) {
        return KNOWN.stream().filter(pattern -> pattern.name().equals(name)).findFirst();
    }
}
