package quarterlight.capture;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.Month;
import java.time.ZoneOffset;
import java.util.Optional;

/**
 * Whether a recorded time can be believed. A time that cannot is kept and flagged, since it is still what the camera said.
 * <p>Common practice, without a published source: a clock that lost its battery restarts at midnight of a January 1st, and
 * no camera wrote Exif times before Exif was published in 1995.
 */
public final class Plausibility {
    /** Clocks are a few minutes off as a matter of course. */
    private static final Duration USUAL_ERROR = Duration.ofMinutes(10);
    /** The zone furthest ahead of UTC in use. */
    private static final ZoneOffset FURTHEST = ZoneOffset.ofHours(14);

    private static final int FIRST_YEAR = 1995;

    private Plausibility() {}

    /**
     * Why a recorded time is suspect, as a sentence; empty if it is not.
     *
     * @param time as recorded, by the camera's clock
     * @param offset recorded offset; if empty, the time is in the future only if it is so everywhere on earth
     * @param now the present
     */
    public static Optional<String> doubt(LocalDateTime time, Optional<ZoneOffset> offset, Instant now) {
        if (time.toInstant(offset.orElse(FURTHEST)).isAfter(now.plus(USUAL_ERROR))) {
            return Optional.of("The recorded time " + time + " is in the future; check the camera's clock.");
        }
        if (time.getYear() < FIRST_YEAR
                || (time.getMonth() == Month.JANUARY && time.getDayOfMonth() == 1 && time.getHour() == 0)) {
            return Optional.of(
                    "The recorded time " + time + " looks like a clock that was reset; check the camera's clock.");
        }
        return Optional.empty();
    }
}
