package quarterlight.ui.photos.clock;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quarterlight.car.PartialDate;
import quarterlight.car.WrittenDate;

/** Shifts and times of clocks as they are written and typed. Pure functions. */
final class ClockWords {
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("H:mm[:ss]", Locale.ROOT);

    private static final Pattern SIGNED = Pattern.compile("(\\+|-|plus|minus)?\\s*(.*?)\\s*(back|ahead|forward)?");
    private static final Pattern PART = Pattern.compile(
            "(\\d{1,6}|\\ban?(?=\\s))\\s*(days?|d|hours?|hrs?|h|minutes?|mins?|m|seconds?|secs?|s)(?![\\p{L}])");

    private ClockWords() {}

    /** As {@code +01:00:00}, the form that is also typed. */
    static String shift(Duration shift) {
        long s = Math.abs(shift.toSeconds());
        return (shift.isNegative() ? "-" : "+")
                + String.format(Locale.ROOT, "%02d:%02d:%02d", s / 3600, s / 60 % 60, s % 60);
    }

    /** Reads a shift as people write it ({@code 1 hour}, {@code -90 min}, {@code 2 days 1 h}, {@code 1 hour back}), or as {@link #shift} does. */
    static Optional<Duration> typedShift(String typed) {
        String text = typed.strip().toLowerCase(Locale.ROOT).replace('\u2212', '-');
        Matcher signed = SIGNED.matcher(text);
        if (!signed.matches()) {
            return Optional.empty();
        }
        boolean back = "-".equals(signed.group(1)) || "minus".equals(signed.group(1)) || "back".equals(signed.group(3));
        Matcher part = PART.matcher(signed.group(2));
        Duration sum = Duration.ZERO;
        int at = 0;
        while (part.find() && signed.group(2).substring(at, part.start()).matches("[\\s,]*(and)?\\s*")) {
            long count = part.group(1).startsWith("a") ? 1 : Long.parseLong(part.group(1));
            sum = sum.plus(
                    switch (part.group(2).charAt(0)) {
                        case 'd' -> Duration.ofDays(count);
                        case 'h' -> Duration.ofHours(count);
                        case 'm' -> Duration.ofMinutes(count);
                        default -> Duration.ofSeconds(count);
                    });
            at = part.end();
        }
        return at == 0 || !signed.group(2).substring(at).isBlank()
                ? Optional.empty()
                : Optional.of(back ? sum.negated() : sum);
    }

    /**
     * What a clock shows: a time of day, or a date and a time.
     *
     * @param day the day that a bare time belongs to
     */
    static Optional<LocalDateTime> shown(String typed, LocalDate day) {
        String text = typed.strip();
        int cut = text.lastIndexOf(' ');
        Optional<LocalDate> date = cut < 0
                ? Optional.of(day)
                : WrittenDate.parse(text.substring(0, cut))
                        .filter(known -> known.first().equals(known.last()))
                        .map(PartialDate::first);
        if (date.isEmpty()) {
            return Optional.empty();
        }
        try {
            LocalDate on = date.get();
            return Optional.of(on.atTime(LocalTime.parse(text.substring(cut + 1).strip(), TIME)));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }
}
