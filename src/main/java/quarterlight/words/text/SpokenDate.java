package quarterlight.words.text;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quarterlight.units.Days;

/**
 * A date said in words: "week twelve of nineteen ninety-two", "the fourteenth of May seventy-one", "March of sixty-six". Pure.
 *
 * @param week week of the year; 0 if a month is said instead
 * @param month 1 to 12; 0 if a week is said instead
 * @param day day of the month; 0 if none is said
 */
public record SpokenDate(int year, int week, int month, int day, int from, int to) {
    private static final List<String> MONTHS = Days.monthNames();
    private static final Map<String, Integer> ORDINALS = Map.ofEntries(
            Map.entry("first", 1),
            Map.entry("second", 2),
            Map.entry("third", 3),
            Map.entry("fourth", 4),
            Map.entry("fifth", 5),
            Map.entry("sixth", 6),
            Map.entry("seventh", 7),
            Map.entry("eighth", 8),
            Map.entry("ninth", 9),
            Map.entry("tenth", 10),
            Map.entry("eleventh", 11),
            Map.entry("twelfth", 12),
            Map.entry("thirteenth", 13),
            Map.entry("fourteenth", 14),
            Map.entry("fifteenth", 15),
            Map.entry("sixteenth", 16),
            Map.entry("seventeenth", 17),
            Map.entry("eighteenth", 18),
            Map.entry("nineteenth", 19),
            Map.entry("twentieth", 20),
            Map.entry("thirtieth", 30),
            Map.entry("fortieth", 40),
            Map.entry("fiftieth", 50));
    private static final Pattern WRITTEN_ORDINAL = Pattern.compile("(\\d{1,2})(?:st|nd|rd|th)");
    private static final Pattern WRITTEN = Pattern.compile("\\d{1,4}");
    private static final int DATE_WORDS = 4;
    private static final int LAST_WEEK = 53;
    private static final int LAST_DAY = 31;
    private static final int CENTURY = 100;
    private static final int EARLIEST = 1880;
    private static final int LATEST = 2099;
    /** Two figures from here on are of the last century. */
    private static final int LAST_CENTURY_FROM = 30;

    /** Whether a date goes on behind the comma before a token: "the fourteenth of March, nineteen sixty-six". */
    static boolean goesOn(List<Token> tokens, int at) {
        boolean figure = SpokenNumber.isNumberWord(tokens.get(at).word());
        return figure
                && in(tokens.subList(Math.max(0, at - DATE_WORDS), Math.min(tokens.size(), at + DATE_WORDS)))
                        .filter(date -> {
                            int comma = Math.min(at, DATE_WORDS);
                            return date.month() > 0 && date.from() < comma && date.to() > comma;
                        })
                        .isPresent();
    }

    /** The first date among the tokens whose year is said. */
    public static Optional<SpokenDate> in(List<Token> tokens) {
        for (int i = 0; i < tokens.size(); i++) {
            Optional<SpokenDate> date = new Reading(tokens, i).date();
            if (date.isPresent()) {
                return date;
            }
        }
        return Optional.empty();
    }

    /** As dates are stamped: {@code 92W12}, {@code 1971-05-14}, {@code MAY 1971}. */
    public String text() {
        if (week > 0) {
            return String.format(Locale.ROOT, "%02dW%02d", year % CENTURY, week);
        }
        return day > 0
                ? String.format(Locale.ROOT, "%d-%02d-%02d", year, month, day)
                : MONTHS.get(month - 1).substring(0, 3).toUpperCase(Locale.ROOT) + " " + year;
    }

    /** As a tire bears its week: two figures of the year since 2000, one before (49 CFR 574.5). */
    public Optional<String> tireText() {
        return week == 0
                ? Optional.empty()
                : Optional.of(
                        year >= 2000
                                ? String.format(Locale.ROOT, "%02d%02d", week, year % CENTURY)
                                : String.format(Locale.ROOT, "%02d%d", week, year % 10));
    }

    /** Reads on from a token; one attempt each. */
    private static final class Reading {
        private final List<Token> tokens;
        private final int from;
        private int i;

        Reading(List<Token> tokens, int from) {
            this.tokens = tokens;
            this.from = from;
        }

        private String word() {
            return i < tokens.size() ? tokens.get(i).word() : "";
        }

        private void skip(String... words) {
            for (String word : words) {
                if (word().equals(word)) {
                    i++;
                }
            }
        }

        Optional<SpokenDate> date() {
            i = from;
            OptionalInt week = week();
            if (week.isPresent()) {
                skip("of", "in");
                return year(week.getAsInt(), 0, 0);
            }
            i = from;
            int month = month();
            if (month > 0) {
                return afterMonth(month);
            }
            skip("the");
            OptionalInt day = number(LAST_DAY);
            if (day.isEmpty()) {
                return Optional.empty();
            }
            skip("of");
            int after = month();
            skip("of", "in");
            return after == 0 ? Optional.empty() : year(0, after, day.getAsInt());
        }

        /** "May fourteenth seventy-one", "May nineteen seventy-one" (a year), "May of seventy-one"; whichever takes more words. */
        private Optional<SpokenDate> afterMonth(int month) {
            int start = i;
            boolean written = word().length() <= 2 && WRITTEN.matcher(word()).matches();
            skip("the");
            OptionalInt day = number(LAST_DAY);
            skip("of", "in");
            Optional<SpokenDate> whole = day.isPresent() ? year(0, month, day.getAsInt()) : Optional.empty();
            i = start;
            skip("of", "in");
            Optional<SpokenDate> monthOnly = written && day.isPresent() ? Optional.empty() : year(0, month, 0);
            return whole.filter(date ->
                            monthOnly.isEmpty() || date.to() > monthOnly.get().to())
                    .or(() -> monthOnly);
        }

        /** "week twelve", "the twelfth week". */
        private OptionalInt week() {
            if (word().equals("week")) {
                i++;
                skip("number");
                return number(LAST_WEEK);
            }
            skip("the");
            OptionalInt number = number(LAST_WEEK);
            boolean said = number.isPresent() && word().equals("week");
            i += said ? 1 : 0;
            return said ? number : OptionalInt.empty();
        }

        private int month() {
            String said = word();
            for (int m = 0; m < MONTHS.size(); m++) {
                String name = MONTHS.get(m);
                if (said.equals(name) || said.length() >= 3 && said.length() <= 4 && name.startsWith(said)) {
                    i++;
                    return m + 1;
                }
            }
            return 0;
        }

        /** A number or an ordinal from 1 to a limit, in words or figures. */
        private OptionalInt number(int most) {
            String said = word();
            int keep = i;
            Matcher written = WRITTEN_ORDINAL.matcher(said);
            int value = 0;
            if (written.matches()) {
                value = Integer.parseInt(written.group(1));
                i++;
            } else if (WRITTEN.matcher(said).matches()) {
                value = Integer.parseInt(said);
                i++;
            } else if (ORDINALS.containsKey(said)) {
                value = ORDINALS.get(said);
                i++;
            } else {
                value = SpokenNumber.small(said).orElse(0);
                i += value > 0 ? 1 : 0;
                boolean tens = value >= 20 && value % 10 == 0;
                int unit = tens ? unit() : 0;
                value += unit;
            }
            if (value < 1 || value > most) {
                i = keep;
                return OptionalInt.empty();
            }
            return OptionalInt.of(value);
        }

        /** The "two" or "second" of "twenty-two", "twenty-second"; 0 if there is none. */
        private int unit() {
            String said = word();
            int value = ORDINALS.getOrDefault(said, SpokenNumber.small(said).orElse(0));
            if (value < 1 || value > 9) {
                return 0;
            }
            i++;
            return value;
        }

        private Optional<SpokenDate> year(int week, int month, int day) {
            skip("'", "year");
            int year = year();
            return year < EARLIEST || year > LATEST
                    ? Optional.empty()
                    : Optional.of(new SpokenDate(year, week, month, day, from, i));
        }

        /** "nineteen ninety-two", "nineteen oh four", "two thousand and nine", "twenty nineteen", "ninety-two". */
        private int year() {
            String said = word();
            if (WRITTEN.matcher(said).matches()) {
                i++;
                int year = Integer.parseInt(said);
                return year < CENTURY && said.length() == 2 ? ofTwo(year) : year;
            }
            int first = SpokenNumber.small(said).orElse(0);
            if (first == 0) {
                return 0;
            }
            i++;
            if (first == 2 && word().equals("thousand")) {
                i++;
                skip("and");
                return 2000 + belowHundred();
            }
            if (first >= 18 && first <= 20) {
                if (word().equals("hundred")) {
                    i++;
                    skip("and");
                    return first * CENTURY + belowHundred();
                }
                if (word().equals("oh") || word().equals("o")) {
                    i++;
                    return first * CENTURY + belowHundred();
                }
                int rest = belowHundred();
                return rest >= 10 ? first * CENTURY + rest : 0;
            }
            boolean tens = first >= LAST_CENTURY_FROM && first % 10 == 0;
            return tens ? ofTwo(first + unit()) : 0;
        }

        private int belowHundred() {
            int value = SpokenNumber.small(word()).orElse(0);
            if (value == 0) {
                return 0;
            }
            i++;
            return value >= 20 && value % 10 == 0 ? value + unit() : value;
        }

        private static int ofTwo(int year) {
            return year + (year >= LAST_CENTURY_FROM ? 1900 : 2000);
        }
    }
}
