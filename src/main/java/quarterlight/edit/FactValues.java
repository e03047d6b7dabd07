package quarterlight.edit;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quarterlight.car.PartialDate;
import quarterlight.units.Thickness;
import quarterlight.units.ThicknessUnit;
import quarterlight.units.Worded;

/** Reads the values of facts, each as a sentence if it is not what the key takes. Blank means absent. */
final class FactValues {
    private static final Pattern MM = Pattern.compile("(\\d{1,6})(?: ?mm)?");
    private static final Pattern THICKNESS = Pattern.compile("(\\d{1,6}(?:\\.\\d{1,6})?)(?: ?(um|mil))?");
    private static final int FIRST_YEAR = 1880;
    private static final int LAST_YEAR = 2100;
    private static final int FIRST_VISIT_YEAR = 1970;
    private static final double MOST_GAUGE_RANGE_UM = 50_000;

    private FactValues() {}

    static Optional<String> text(String value) {
        return Optional.of(value.strip()).filter(text -> !text.isEmpty());
    }

    static <E extends Enum<E> & Worded> E word(Class<E> type, String key, String value) throws EditRefused {
        Optional<E> found = Worded.find(type, value);
        if (found.isEmpty()) {
            throw new EditRefused(key, key + " cannot be \"" + value + "\". Give one of " + Worded.words(type) + ".");
        }
        return found.get();
    }

    static boolean yesOrNo(String key, String value) throws EditRefused {
        String word = value.strip().toLowerCase(Locale.ROOT);
        if (!word.equals("yes") && !word.equals("no")) {
            throw new EditRefused(key, key + " cannot be \"" + value + "\". Give yes or no.");
        }
        return word.equals("yes");
    }

    static OptionalInt year(String key, String value) throws EditRefused {
        if (value.isBlank()) {
            return OptionalInt.empty();
        }
        String digits = value.strip();
        int year = digits.matches("\\d{4}") ? Integer.parseInt(digits) : 0;
        if (year < FIRST_YEAR || year > LAST_YEAR) {
            throw new EditRefused(
                    key,
                    key + " cannot be \"" + value + "\". Give a year of 4 digits from " + FIRST_YEAR + " to "
                            + LAST_YEAR + ".");
        }
        return OptionalInt.of(year);
    }

    static Optional<PartialDate> built(String key, String value) throws EditRefused {
        if (value.isBlank()) {
            return Optional.empty();
        }
        Optional<PartialDate> date = PartialDate.parse(value)
                .filter(d -> d.first().getYear() >= FIRST_YEAR && d.last().getYear() <= LAST_YEAR);
        if (date.isEmpty()) {
            throw new EditRefused(
                    key,
                    key + " cannot be \"" + value + "\". Give a real day, month or year as YYYY-MM-DD, YYYY-MM or YYYY,"
                            + " from " + FIRST_YEAR + " to " + LAST_YEAR + ".");
        }
        return date;
    }

    static Optional<LocalDate> day(String key, String value) throws EditRefused {
        if (value.isBlank()) {
            return Optional.empty();
        }
        Optional<PartialDate> date = PartialDate.parse(value)
                .filter(d -> d.first().equals(d.last()))
                .filter(d ->
                        d.first().getYear() >= FIRST_VISIT_YEAR && d.first().getYear() <= LAST_YEAR);
        if (date.isEmpty()) {
            throw new EditRefused(
                    key,
                    key + " cannot be \"" + value + "\". Give a real day as YYYY-MM-DD, from " + FIRST_VISIT_YEAR
                            + " to " + LAST_YEAR + ".");
        }
        return date.map(PartialDate::first);
    }

    static ZoneId timezone(String key, String value) throws EditRefused {
        try {
            return ZoneId.of(value.strip());
        } catch (DateTimeException e) {
            throw new EditRefused(
                    key,
                    key + " cannot be \"" + value + "\". Give the name of a time zone such as America/Denver, or an"
                            + " offset such as -07:00.");
        }
    }

    /** A length of the car in whole mm within a range that a car can have. */
    static OptionalInt mm(String key, String value, int least, int most) throws EditRefused {
        if (value.isBlank()) {
            return OptionalInt.empty();
        }
        Matcher m = MM.matcher(value.strip().toLowerCase(Locale.ROOT));
        int mm = m.matches() ? Integer.parseInt(m.group(1)) : -1;
        if (mm < least || mm > most) {
            throw new EditRefused(
                    key,
                    key + " cannot be \"" + value + "\". Give whole millimeters from " + least + " to " + most + ".");
        }
        return OptionalInt.of(mm);
    }

    /** A thickness in um, or in mil if the unit says so. */
    static Thickness thickness(String key, String value) throws EditRefused {
        Matcher m = THICKNESS.matcher(value.strip().toLowerCase(Locale.ROOT));
        double um = m.matches() ? um(m) : 0;
        if (!(um > 0 && um <= MOST_GAUGE_RANGE_UM)) {
            throw new EditRefused(
                    key,
                    key + " cannot be \"" + value + "\". Give a number of um above 0 up to " + (int) MOST_GAUGE_RANGE_UM
                            + ", or a number with its unit such as 80 mil.");
        }
        return new Thickness(um);
    }

    private static double um(Matcher m) {
        double typed = new BigDecimal(m.group(1)).doubleValue();
        return "mil".equals(m.group(2)) ? ThicknessUnit.MIL.toUm(typed) : typed;
    }
}
