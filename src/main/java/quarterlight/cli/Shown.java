package quarterlight.cli;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import quarterlight.units.Numerals;

/** Numbers as people read them: a true minus, and a dash for what is not known. */
final class Shown {
    static final String UNKNOWN = "\u2013";

    private Shown() {}

    static String number(double value, int decimals) {
        return Numerals.fixed(value, decimals);
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
        return Numerals.count(n, one, many);
    }
}
