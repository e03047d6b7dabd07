package quarterlight.ui.photos.clock;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.Optional;

/** Shifts and times of clocks as they are written and typed. Pure functions. */
final class ClockWords {
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("H:mm[:ss]", Locale.ROOT);

    private ClockWords() {}

    /** As {@code +01:00:00}, the form that is also typed. */
    static String shift(Duration shift) {
        long s = Math.abs(shift.toSeconds());
        return (shift.isNegative() ? "-" : "+")
                + String.format(Locale.ROOT, "%02d:%02d:%02d", s / 3600, s / 60 % 60, s % 60);
    }

    /**
     * What a clock shows: a time of day, or a date and a time.
     *
     * @param day the day that a bare time belongs to
     */
    static Optional<LocalDateTime> shown(String typed, LocalDate day) {
        String text = typed.strip();
        int cut = text.indexOf(' ');
        try {
            LocalDate on = cut < 0 ? day : LocalDate.parse(text.substring(0, cut));
            return Optional.of(on.atTime(LocalTime.parse(text.substring(cut + 1).strip(), TIME)));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }
}
