package quarterlight.visit.statement;

import java.util.Locale;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A size as it was said: {@code palm}, {@code 4 in}. */
public record SaidSize(String said) {
    private static final double MM_PER_INCH = 25.4;
    private static final double MM_PER_CM = 10;
    private static final Pattern LENGTH =
            Pattern.compile("(\\d{1,6}(?:\\.\\d{1,3})?) ?(mm|cm|in|inch|inches|\")", Pattern.CASE_INSENSITIVE);

    public SaidSize {
        Objects.requireNonNull(said, "said");
        if (said.isBlank()) {
            throw new IllegalArgumentException("a size says something");
        }
    }

    /** The length in mm; empty if a size was said without a number and a unit. */
    public OptionalDouble mm() {
        Matcher m = LENGTH.matcher(said.strip());
        if (!m.matches()) {
            return OptionalDouble.empty();
        }
        double number = Double.parseDouble(m.group(1));
        return OptionalDouble.of(
                switch (m.group(2).toLowerCase(Locale.ROOT)) {
                    case "mm" -> number;
                    case "cm" -> number * MM_PER_CM;
                    default -> number * MM_PER_INCH;
                });
    }

    @Override
    public String toString() {
        return said;
    }
}
