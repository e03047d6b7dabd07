package quarterlight.capture;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A time as an Exif string gives it, read without any zone.
 * <p>The form is {@code YYYY:MM:DD HH:MM:SS}; blanks with or without colons, and zeros, mean that the camera did not know.
 * Dashes and slashes in the date are read too, since some programs write them. Source: CIPA DC-008 (Exif), DateTimeOriginal 0x9003,
 * SubSecTimeOriginal 0x9291, OffsetTimeOriginal 0x9011.
 *
 * @param time the time without its fraction, empty if the text gives none that can be
 * @param complaint why there is no time, in words that follow the tag's name; empty if there is one
 */
public record TimeText(Optional<LocalDateTime> time, String complaint) {
    private static final Pattern FORM =
            Pattern.compile("(\\d{4})[:/-](\\d{2})[:/-](\\d{2})[ T](\\d{2}):(\\d{2}):(\\d{2})(?:\\.\\d*)?");
    private static final Pattern OFFSET = Pattern.compile("([+-])(\\d{2}):(\\d{2})");
    private static final Pattern FRACTION = Pattern.compile("\\d{1,40}");
    private static final int MAX_FRACTION_DIGITS = 9;
    private static final int SHOWN = 40;

    /** Reads a date and time as recorded. */
    public static TimeText parse(String raw) {
        String text = bare(raw);
        if (text.replace(":", "").isBlank()) {
            return absent("is blank");
        }
        Matcher form = FORM.matcher(text);
        if (!form.matches()) {
            return absent("is malformed: \"" + shown(text) + "\"");
        }
        if (text.chars().noneMatch(letter -> letter >= '1' && letter <= '9')) {
            return absent("is zero");
        }
        try {
            if (number(form, 1) == 0) {
                return absent("is impossible: " + shown(text));
            }
            return new TimeText(
                    Optional.of(LocalDateTime.of(
                            number(form, 1),
                            number(form, 2),
                            number(form, 3),
                            number(form, 4),
                            number(form, 5),
                            number(form, 6))),
                    "");
        } catch (DateTimeException e) {
            return absent("is impossible: " + shown(text));
        }
    }

    /** The digits of a fraction of a second as recorded ("07" is 0.07 s), without padding; empty if there are none or others. */
    public static Optional<String> fraction(String raw) {
        String text = bare(raw);
        return FRACTION.matcher(text).matches() ? Optional.of(text) : Optional.empty();
    }

    /** A recorded offset {@code ±HH:MM}; empty if blank, malformed or beyond 18 hours. */
    public static Optional<ZoneOffset> offset(String raw) {
        Matcher form = OFFSET.matcher(bare(raw));
        if (!form.matches()) {
            return Optional.empty();
        }
        try {
            int sign = form.group(1).equals("-") ? -1 : 1;
            return Optional.of(ZoneOffset.ofHoursMinutes(sign * number(form, 2), sign * number(form, 3)));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    /** A time with the fraction that its digits state, to the nanosecond; further digits are cut. */
    public static LocalDateTime withFraction(LocalDateTime time, String digits) {
        if (digits.isEmpty()) {
            return time;
        }
        String nine = (digits + "0".repeat(MAX_FRACTION_DIGITS)).substring(0, MAX_FRACTION_DIGITS);
        return time.withNano(Integer.parseInt(nine));
    }

    private static TimeText absent(String complaint) {
        return new TimeText(Optional.empty(), complaint);
    }

    private static String bare(String raw) {
        int end = raw.indexOf('\0');
        return (end < 0 ? raw : raw.substring(0, end)).strip();
    }

    private static String shown(String text) {
        String clean = text.replaceAll("\\p{Cntrl}", "?");
        return clean.length() <= SHOWN ? clean : clean.substring(0, SHOWN) + "…";
    }

    private static int number(Matcher form, int group) {
        return Integer.parseInt(form.group(group));
    }
}
