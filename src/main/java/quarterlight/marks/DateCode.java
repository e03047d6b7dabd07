package quarterlight.marks;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/** Reads a text by a date pattern in every way that it can be read; decades are not guessed, all of them are candidates. */
final class DateCode {
    private static final String WITHOUT_I = "ABCDEFGHJKLM";
    private static final String WITH_I = "ABCDEFGHIJKL";
    private static final int FIRST_YEAR = 1920;
    private static final int LAST_YEAR = 2039;
    private static final String BETWEEN = " -/.";

    private final DatePattern pattern;
    private final String text;
    private final Set<DateCandidate> found = new LinkedHashSet<>();

    private DateCode(DatePattern pattern, String text) {
        this.pattern = pattern;
        this.text = text;
    }

    /**
     * All candidates of a text without unread letters, in the order of their years; empty if the pattern does not suit.
     *
     * @param text as read; case does not matter
     */
    static List<DateCandidate> read(DatePattern pattern, String text) {
        DateCode code = new DateCode(pattern, text.strip().toUpperCase(Locale.ROOT));
        code.match(0, 0, DateFields.NONE);
        return List.copyOf(code.found);
    }

    private void match(int inForm, int inText, DateFields fields) {
        String form = pattern.form();
        if (inForm == form.length()) {
            if (inText == text.length()) {
                fields.candidate(pattern.name()).ifPresent(found::add);
            }
            return;
        }
        char c = form.charAt(inForm);
        if (c == '{') {
            int end = form.indexOf('}', inForm);
            field(form.substring(inForm + 1, end), end + 1, inText, fields);
        } else if (c == ' ') {
            int next = inText;
            while (next < text.length() && BETWEEN.indexOf(text.charAt(next)) >= 0) {
                next++;
            }
            if (next > inText || separable(inForm)) {
                match(inForm + 1, next, fields);
            }
        } else if (inText < text.length() && text.charAt(inText) == Character.toUpperCase(c)) {
            match(inForm + 1, inText + 1, fields);
        }
    }

    /** A blank of the form may be left out of the text where no two digit fields of open length meet. */
    private boolean separable(int inForm) {
        String form = pattern.form();
        return form.startsWith("{ww}") || form.startsWith("{mon}", inForm - 5) || form.startsWith("{mon}", inForm + 1);
    }

    private void field(String name, int inForm, int at, DateFields fields) {
        switch (name) {
            case "y" ->
                digits(at, 1, 1, (v, next) -> years(10, v).forEach(y -> match(inForm, next, fields.withYear(y))));
            case "yy" ->
                digits(at, 2, 2, (v, next) -> years(100, v).forEach(y -> match(inForm, next, fields.withYear(y))));
            case "yyyy" -> digits(at, 4, 4, (v, next) -> match(inForm, next, fields.withYear(v)));
            case "M" -> letter(WITHOUT_I, at, inForm, fields::withMonth);
            case "L" -> letter(WITH_I, at, inForm, fields::withMonth);
            case "m" -> digits(at, 1, 2, (v, next) -> within(v, 12, inForm, next, fields.withMonth(v)));
            case "mm" -> digits(at, 2, 2, (v, next) -> within(v, 12, inForm, next, fields.withMonth(v)));
            case "mon" -> monthName(at, inForm, fields);
            case "d" -> digits(at, 1, 2, (v, next) -> within(v, 31, inForm, next, fields.withDay(v)));
            case "dd" -> digits(at, 2, 2, (v, next) -> within(v, 31, inForm, next, fields.withDay(v)));
            case "ww" -> digits(at, 2, 2, (v, next) -> within(v, 53, inForm, next, fields.withWeek(v)));
            case "q" -> digits(at, 1, 1, (v, next) -> within(v, 4, inForm, next, fields.withQuarter(v)));
            default -> throw new IllegalArgumentException("the pattern " + pattern.name() + " has no field " + name);
        }
    }

    private interface Digits {
        void read(int value, int next);
    }

    private void digits(int at, int least, int most, Digits number) {
        for (int length = least; length <= most && at + length <= text.length(); length++) {
            String part = text.substring(at, at + length);
            if (part.chars().allMatch(ch -> ch >= '0' && ch <= '9')) {
                number.read(Integer.parseInt(part), at + length);
            }
        }
    }

    private void within(int value, int most, int inForm, int next, DateFields fields) {
        if (value >= 1 && value <= most) {
            match(inForm, next, fields);
        }
    }

    private void letter(String letters, int at, int inForm, IntFunction<DateFields> month) {
        int place = at < text.length() ? letters.indexOf(text.charAt(at)) : -1;
        if (place >= 0) {
            match(inForm, at + 1, month.apply(place + 1));
        }
    }

    private void monthName(int at, int inForm, DateFields fields) {
        for (Month month : Month.values()) {
            String name = month.getDisplayName(TextStyle.FULL, Locale.US).toUpperCase(Locale.ROOT);
            List<String> spellings = new ArrayList<>(List.of(name));
            if (name.length() > 3) {
                spellings.add(name.substring(0, 3));
            }
            spellings.stream()
                    .filter(spelling -> text.startsWith(spelling, at))
                    .forEach(spelling -> match(inForm, at + spelling.length(), fields.withMonth(month.getValue())));
        }
    }

    private static IntStream years(int modulus, int value) {
        return IntStream.rangeClosed(FIRST_YEAR, LAST_YEAR).filter(year -> year % modulus == value);
    }
}
