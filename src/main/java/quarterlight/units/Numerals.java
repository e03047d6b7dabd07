package quarterlight.units;

import java.math.BigDecimal;
import quarterlight.language.Sentences;

/** Numbers as people read them, on screens, pages and in commands alike, with the decimal sign of the language in hand. */
public final class Numerals {
    private Numerals() {}

    /** With so many decimals and a true minus; what rounds to zero has none. */
    public static String fixed(double value, int decimals) {
        String text = Sentences.figure("%." + decimals + "f", value);
        boolean zero = text.chars().noneMatch(c -> c >= '1' && c <= '9');
        return zero ? text.replace("-", "") : trueMinus(text);
    }

    /** A number that is text already, with a true minus. */
    public static String trueMinus(String number) {
        return number.replace('-', '\u2212');
    }

    /** A number as it was typed, every decimal of it. */
    public static String typed(BigDecimal value) {
        return Sentences.figure("%." + Math.max(0, value.scale()) + "f", value);
    }

    /** A count with its noun: {@code 1 photo}, {@code 3 photos}. */
    public static String count(long n, String one, String many) {
        return n + " " + (n == 1 ? one : many);
    }
}
