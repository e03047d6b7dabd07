package quarterlight.marks.code;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/**
 * Reads a text by a date pattern in every way that it can be read; decades are not guessed, all of them are candidates. An unread
 * letter is whatever the pattern lets stand in its place.
 */
final class DateCode {
    private static final String WITHOUT_I = "ABCDEFGHJKLM";
    private static final String WITH_I = "ABCDEFGHIJKL";
    private static final String DIGITS = "0123456789";
    private static final int FIRST_YEAR = 1920;
    private static final int LAST_YEAR = 2039;
    private static final int MAX_LETTERS = 3;
    private static final String BETWEEN = " -/.";

    private final DatePattern pattern;
    private final String text;
    private final Map<String, Set<DateCandidate>> found = new LinkedHashMap<>();

    private DateCode(DatePattern pattern, String text) {
        this.pattern = pattern;
        this.text = text;
    }

    /**
     * All candidates of a text by the text with its unread letters filled in, in the order of their years; empty if the pattern
     * does not suit.
     *
     * @param text as read; case does not matter
     */
    static Map<String, List<DateCandidate>> read(DatePattern pattern, String text) {
        DateCode code = new DateCode(pattern, text.strip().toUpperCase(Locale.ROOT));
        code.match(0, "", DateFields.NONE);
        Map<String, List<DateCandidate>> all = new LinkedHashMap<>();
        code.found.forEach((filled, dates) -> all.put(filled, List.copyOf(dates)));
        return all;
    }

    /** @param filled the text up to here, with unread letters filled in */
    private void match(int inForm, String filled, DateFields fields) {
        String form = pattern.form();
        int at = filled.length();
        if (inForm == form.length()) {
            if (at == text.length()) {
                IntStream years = pattern.bearsYear() ? IntStream.of(fields.year()) : years(1, 0);
                years.mapToObj(fields::withYear)
                        .flatMap(dated -> dated.candidate(pattern.name()).stream())
                        .forEach(date -> found.computeIfAbsent(filled, key -> new LinkedHashSet<>())
                                .add(date));
            }
            return;
        }
        char c = form.charAt(inForm);
        if (c == '{') {
            int end = form.indexOf('}', inForm);
            field(form.substring(inForm + 1, end), end + 1, filled, fields);
        } else if (c == ' ' || c == '~') {
            between(c == '~', inForm + 1, filled, fields);
        } else {
            char wanted = Character.toUpperCase(c);
            if (at < text.length() && (text.charAt(at) == wanted || text.charAt(at) == UnreadLetter.LETTER)) {
                match(inForm + 1, filled + wanted, fields);
            }
        }
    }

    private void between(boolean mayLack, int inForm, String filled, DateFields fields) {
        int next = filled.length();
        while (next < text.length() && BETWEEN.indexOf(text.charAt(next)) >= 0) {
            next++;
        }
        if (next > filled.length() || mayLack) {
            match(inForm, filled + text.substring(filled.length(), next), fields);
        }
    }

    private void field(String name, int next, String filled, DateFields fields) {
        switch (name) {
            case "y" ->
                digits(filled, 1, 1, (v, then) -> years(10, v).forEach(y -> match(next, then, fields.withYear(y))));
            case "yy" ->
                digits(filled, 2, 2, (v, then) -> years(100, v).forEach(y -> match(next, then, fields.withYear(y))));
            case "yyyy" ->
                digits(
                        filled,
                        4,
                        4,
                        (v, then) -> within(v, FIRST_YEAR, LAST_YEAR, () -> match(next, then, fields.withYear(v))));
            case "M" -> letter(WITHOUT_I, filled, next, fields::withMonth);
            case "L" -> letter(WITH_I, filled, next, fields::withMonth);
            case "m" -> number(filled, 1, 2, 12, next, fields::withMonth);
            case "mm" -> number(filled, 2, 2, 12, next, fields::withMonth);
            case "mon" -> monthName(filled, next, fields);
            case "d" -> number(filled, 1, 2, 31, next, fields::withDay);
            case "dd" -> number(filled, 2, 2, 31, next, fields::withDay);
            case "ddd" -> number(filled, 3, 3, 366, next, fields::withDayOfYear);
            case "ww" -> number(filled, 2, 2, 53, next, fields::withWeek);
            case "a" -> letters(filled, next, fields);
            case "q" -> number(filled, 1, 1, 4, next, fields::withQuarter);
            default -> throw new IllegalArgumentException("the pattern " + pattern.name() + " has no field " + name);
        }
    }

    private interface Digits {
        void read(int value, String filled);
    }

    private void digits(String filled, int least, int most, Digits number) {
        for (int length = least; length <= most && filled.length() + length <= text.length(); length++) {
            digits(filled, length, "", number);
        }
    }

    private void digits(String filled, int left, String read, Digits number) {
        if (left == 0) {
            number.read(Integer.parseInt(read), filled);
            return;
        }
        choices(filled.length(), DIGITS)
                .chars()
                .forEach(digit -> digits(filled + (char) digit, left - 1, read + (char) digit, number));
    }

    /** Which of some letters can stand at a place of the text. */
    private String choices(int at, String letters) {
        char c = text.charAt(at);
        return c == UnreadLetter.LETTER ? letters : letters.indexOf(c) >= 0 ? String.valueOf(c) : "";
    }

    private void number(String filled, int least, int most, int largest, int next, IntFunction<DateFields> with) {
        digits(filled, least, most, (v, then) -> within(v, 1, largest, () -> match(next, then, with.apply(v))));
    }

    private static void within(int value, int least, int most, Runnable then) {
        if (value >= least && value <= most) {
            then.run();
        }
    }

    private void letter(String letters, String filled, int next, IntFunction<DateFields> month) {
        if (filled.length() < text.length()) {
            for (char c : choices(filled.length(), letters).toCharArray()) {
                match(next, filled + c, month.apply(letters.indexOf(c) + 1));
            }
        }
    }

    private void letters(String filled, int next, DateFields fields) {
        String more = filled;
        for (int n = 1; n <= MAX_LETTERS && more.length() < text.length(); n++) {
            char c = text.charAt(more.length());
            if (!Character.isLetter(c) && c != UnreadLetter.LETTER) {
                return;
            }
            more += c;
            match(next, more, fields);
        }
    }

    private void monthName(String filled, int next, DateFields fields) {
        for (Month month : Month.values()) {
            String name = month.getDisplayName(TextStyle.FULL, Locale.US).toUpperCase(Locale.ROOT);
            List<String> spellings = new ArrayList<>(List.of(name));
            if (name.length() > 3) {
                spellings.add(name.substring(0, 3));
            }
            spellings.stream()
                    .filter(spelling -> stands(spelling, filled.length()))
                    .forEach(spelling -> match(next, filled + spelling, fields.withMonth(month.getValue())));
        }
    }

    private boolean stands(String word, int at) {
        return at + word.length() <= text.length()
                && IntStream.range(0, word.length())
                        .allMatch(i ->
                                text.charAt(at + i) == word.charAt(i) || text.charAt(at + i) == UnreadLetter.LETTER);
    }

    private static IntStream years(int modulus, int value) {
        return IntStream.rangeClosed(FIRST_YEAR, LAST_YEAR).filter(year -> year % modulus == value);
    }
}
