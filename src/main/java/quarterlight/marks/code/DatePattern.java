package quarterlight.marks.code;

import java.util.Collections;
import java.util.HashSet;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A small readable pattern for date codes. In the form, a word in braces is a field and everything else stands for itself:
 * <ul>
 *   <li>{@code {y}} last digit of the year, {@code {yy}} last two, {@code {yyyy}} all four
 *   <li>{@code {M}} a month letter, A to M without I, {@code {L}} a month letter, A to L with I
 *   <li>{@code {m}} month in one or two digits, {@code {mm}} in two, {@code {mon}} its first three letters or its whole name
 *   <li>{@code {d}} day in one or two digits, {@code {dd}} in two, {@code {ddd}} day of the year in three
 *   <li>{@code {ww}} week of the year in two digits (ISO 8601), {@code {q}} quarter
 *   <li>{@code {a}} one to three letters that mean no date, such as those of a plant or a shift
 *   <li>a blank: a blank, hyphen, slash or point must stand there; {@code ~}: it may
 * </ul>
 *
 * A form bears one year, or none if it bears a month and a day: such a date is resolved from the car's build.
 *
 * @param name by which the {@code pattern} column of a mark asks for it
 * @param example a text that it reads
 * @param reading what the example means, in words
 */
public record DatePattern(String name, String form, String example, String reading) {
    /** Asks, in place of a pattern's name, that a text be taken as a number that means no date. */
    public static final String NONE = "none";

    private static final Pattern FIELD = Pattern.compile("\\{([^}]*)\\}");
    private static final Set<String> FIELDS =
            Set.of("y", "yy", "yyyy", "M", "L", "m", "mm", "mon", "d", "dd", "ddd", "ww", "q", "a");
    private static final Set<String> YEARS = Set.of("y", "yy", "yyyy");
    private static final Set<String> MONTHS = Set.of("M", "L", "m", "mm", "mon");
    private static final Set<String> DAYS = Set.of("d", "dd");

    /** @throws IllegalArgumentException if the form has a field that there is not, or no year; the message names it */
    public DatePattern {
        if (name.isBlank() || name.equals(NONE)) {
            throw new IllegalArgumentException("a pattern needs a name, other than '" + NONE + "'");
        }
        Objects.requireNonNull(example, "example");
        Objects.requireNonNull(reading, "reading");
        Matcher field = FIELD.matcher(form);
        Set<String> seen = new HashSet<>();
        int years = 0;
        while (field.find()) {
            if (!FIELDS.contains(field.group(1))) {
                throw new IllegalArgumentException(
                        "the form '" + form + "' has the field {" + field.group(1) + "}, which there is not");
            }
            seen.add(field.group(1));
            years += YEARS.contains(field.group(1)) ? 1 : 0;
        }
        boolean monthAndDay = !Collections.disjoint(seen, MONTHS) && !Collections.disjoint(seen, DAYS);
        if (years > 1 || years == 0 && !monthAndDay) {
            throw new IllegalArgumentException("the form '" + form
                    + "' needs one year ({y}, {yy} or {yyyy}), or a month and a day if the code bears no year");
        }
        String rest = field.reset().replaceAll("");
        if (rest.indexOf('{') >= 0 || rest.indexOf('}') >= 0) {
            throw new IllegalArgumentException("a brace of the form '" + form + "' stands alone");
        }
    }

    /** A form written in place of a pattern's name; empty for a name, and for a form that cannot be. */
    public static Optional<DatePattern> form(String written) {
        if (written.indexOf('{') < 0) {
            return Optional.empty();
        }
        try {
            return Optional.of(new DatePattern(written, written, "", ""));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** False if the code says month and day only. */
    public boolean bearsYear() {
        return form.contains("{y");
    }
}
