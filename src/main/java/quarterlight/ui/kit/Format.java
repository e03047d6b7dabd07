package quarterlight.ui.kit;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import quarterlight.units.Days;
import quarterlight.units.Numerals;
import quarterlight.units.Thickness;
import quarterlight.units.ThicknessUnit;

/** Numbers and times for people: true minus, thin space before the unit, mil with one decimal and um with none. */
public final class Format {
    private static final String THIN = "\u2009";
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.US);

    private Format() {}

    public static String number(double value, int decimals) {
        return Numerals.fixed(value, decimals);
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
        return Days.day(time);
    }
}
