package quarterlight.table.text;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/** Numbers as they stand in tables: digits, at most one decimal sign, a sign in front; no exponent and no thousands sign. */
public final class NumberText {
    private static final Pattern POINT = Pattern.compile("[+-]?\\d{1,20}(\\.\\d{1,20})?");
    private static final Pattern POINT_OR_COMMA = Pattern.compile("[+-]?\\d{1,20}([.,]\\d{1,20})?");

    private NumberText() {}

    /** Reads a number with its digits kept; empty if the text is none. The true minus sign counts as a minus. */
    public static Optional<BigDecimal> parse(String text, boolean decimalComma) {
        String plain = text.replace('\u2212', '-');
        if (!(decimalComma ? POINT_OR_COMMA : POINT).matcher(plain).matches()) {
            return Optional.empty();
        }
        return Optional.of(new BigDecimal(plain.replace(',', '.')));
    }

    /** The shortest plain decimal that reads back as the same double. */
    public static String of(double value) {
        return value == 0 ? "0" : BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
