package quarterlight.page;

import static quarterlight.language.Sentences.say;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.Optional;
import quarterlight.capture.CorrectedTimes;
import quarterlight.units.Days;
import quarterlight.visit.photo.PhotoId;

/** When a photo was taken, in words: the day with its year and the time of day, and a remark where it is older than the visit. */
public final class CaptureTimeText {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.US);
    private static final int MIN_MONTHS = 2;

    private CaptureTimeText() {}

    /** Day and time; empty text if neither is known. */
    public static String words(CorrectedTimes times, PhotoId photo) {
        return local(times, photo)
                .map(at -> Days.day(at.toLocalDate()) + ", " + CLOCK.format(at))
                .orElse("");
    }

    /** The same with the remark on a photo that was there before the visit. */
    public static String words(CorrectedTimes times, PhotoId photo, Optional<LocalDate> visit) {
        return words(times, photo)
                + visit.flatMap(day -> remark(times, photo, day))
                        .map(remark -> "; " + remark)
                        .orElse("");
    }

    /** How much older than the visit a photo is, if it is. */
    static Optional<String> remark(CorrectedTimes times, PhotoId photo, LocalDate visit) {
        return local(times, photo)
                .map(LocalDateTime::toLocalDate)
                .filter(day -> day.isBefore(visit))
                .map(day -> say("diagram.capture-time-text.older-than-the-visit-by", span(day, visit)));
    }

    private static String span(LocalDate day, LocalDate visit) {
        long months = ChronoUnit.MONTHS.between(day, visit);
        if (months < MIN_MONTHS) {
            return say("diagram.capture-time-text.days", ChronoUnit.DAYS.between(day, visit));
        }
        return months < 24
                ? say("diagram.capture-time-text.months", months)
                : say("diagram.capture-time-text.years", months / 12);
    }

    private static Optional<LocalDateTime> local(CorrectedTimes times, PhotoId photo) {
        return times.of(photo).map(time -> time.local().toLocalDateTime());
    }
}
