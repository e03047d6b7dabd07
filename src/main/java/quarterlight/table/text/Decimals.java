package quarterlight.table.text;

import static quarterlight.language.Sentences.say;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * How the numbers of one table are written: whether a comma may be the decimal sign, and which numbers could be meant in two ways because
 * the table uses both signs. {@code 1.234} is 1.234 in a table of decimal points; where decimal commas stand too it may be 1234 as well.
 */
public final class Decimals {
    private static final Pattern WITH_COMMA = Pattern.compile("[+-]?\\d+,\\d+");
    private static final Pattern WITH_POINT = Pattern.compile("[+-]?\\d+\\.\\d+");
    /** As thousands are grouped: never with a leading zero. */
    private static final Pattern GROUPED = Pattern.compile("[+-]?[1-9]\\d{0,2}[.,]\\d{3}");

    private final boolean comma;
    private final boolean both;

    private Decimals(boolean comma, boolean both) {
        this.comma = comma;
        this.both = both;
    }

    /** A table that is not looked at as a whole. */
    public static Decimals of(boolean comma) {
        return new Decimals(comma, false);
    }

    /** @param rows all cells of the table */
    public static Decimals of(boolean comma, Collection<List<String>> rows) {
        return new Decimals(comma, comma && anyLike(rows, WITH_COMMA) && anyLike(rows, WITH_POINT));
    }

    private static boolean anyLike(Collection<List<String>> rows, Pattern form) {
        return rows.stream().flatMap(List::stream).anyMatch(cell -> form.matcher(
                        cell.strip().replace('\u2212', '-'))
                .matches());
    }

    /** Empty if the text is no number. */
    public Optional<BigDecimal> parse(String text) {
        return NumberText.parse(text, comma);
    }

    /** Why a number cannot be taken, though it is one; empty if it can. */
    public Optional<String> ambiguity(String text) {
        if (!both || !GROUPED.matcher(text.replace('\u2212', '-')).matches()) {
            return Optional.empty();
        }
        String digits = text.replaceAll("[.,]", "");
        char other = text.indexOf('.') >= 0 ? ',' : '.';
        return Optional.of(say(
                other == ',' ? "cell.number.comma-too" : "cell.number.point-too",
                Quoted.of(text),
                digits,
                text.replace(other == ',' ? '.' : ',', other)));
    }

    /** True if the text would be a number were commas allowed. */
    public boolean lacksComma(String text) {
        return !comma && NumberText.parse(text, true).isPresent();
    }
}
