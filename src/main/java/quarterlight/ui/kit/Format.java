package quarterlight.ui.kit;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import quarterlight.units.Thickness;
import quarterlight.units.ThicknessUnit;

/** Numbers and times for people: true minus, thin space before the unit, mil with one decimal and um with none. */
public final class Format {
    private static final String THIN = "\u2009";
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.US);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.US);

    private Format() {}

    public static String number(double value, int decimals) {
        String text = String.format(Locale.US, "%." + decimals + "f", value);
        boolean zero = text.chars().noneMatch(c -> c >= '1' && c <= '9');
        return zero ? text.replace("-", "") : text.replace('-', '\u2212');
    }

    /** The bare number of a thickness in a unit. */
    public static String thickness(Thickness thickness, ThicknessUnit unit) {
        return number(thickness.in(unit), unit == ThicknessUnit.MIL ? 1 : 0);
    }

    public static String thicknessWithUnit(Thickness thickness, ThicknessUnit unit) {
        return thickness(thickness, unit) + THIN + unit(unit);
    }

    public static String unit(ThicknessUnit unit) {
        return unit == ThicknessUnit.MIL ? "mil" : "\u00b5m";
    }

    public static String withUnit(double value, int decimals, String unit) {
        return number(value, decimals) + THIN + unit;
    }

    public static String clock(LocalDateTime time) {
        return CLOCK.format(time);
    }

    public static String day(LocalDateTime time) {
        return DAY.format(time);
    }
}
