package quarterlight.cli;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Numbers as people read them: a true minus, and a dash for what is not known. */
final class Shown {
    static final String UNKNOWN = "\u2013";

    private Shown() {}

    static String number(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        boolean zero = text.chars().noneMatch(c -> c >= '1' && c <= '9');
        return zero ? text.replace("-", "") : text.replace('-', '\u2212');
    }

    static String number(OptionalDouble value, int decimals) {
        return value.isPresent() ? number(value.getAsDouble(), decimals) : UNKNOWN;
    }

    static String number(OptionalInt value) {
        return value.isPresent() ? Integer.toString(value.getAsInt()) : UNKNOWN;
    }

    static String text(Optional<?> value) {
        return value.map(Object::toString).orElse(UNKNOWN);
    }

    /** A count with its noun: {@code 1 photo}, {@code 3 photos}. */
    static String count(long n, String one, String many) {
        return n + " " + (n == 1 ? one : many);
    }
}
