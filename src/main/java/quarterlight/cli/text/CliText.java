package quarterlight.cli.text;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import quarterlight.units.Numerals;

/** Numbers as people read them: a true minus, and a dash for what is not known. */
public final class CliText {
    public static final String UNKNOWN = "\u2013";

    private CliText() {}

    public static String number(double value, int decimals) {
        return Numerals.fixed(value, decimals);
    }

    public static String number(OptionalDouble value, int decimals) {
        return value.isPresent() ? number(value.getAsDouble(), decimals) : UNKNOWN;
    }

    public static String number(OptionalInt value) {
        return value.isPresent() ? Integer.toString(value.getAsInt()) : UNKNOWN;
    }

    public static String text(Optional<?> value) {
        return value.map(Object::toString).orElse(UNKNOWN);
    }

    /** A sentence on a line of its own; nothing if there is none. */
    public static String line(Optional<String> sentence) {
        return sentence.map(text -> text + "\n").orElse("");
    }

    /** A count with its noun: {@code 1 photo}, {@code 3 photos}. */
    public static String count(long n, String one, String many) {
        return Numerals.count(n, one, many);
    }
}
