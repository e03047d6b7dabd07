package quarterlight.visit.photo;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Objects;
import java.util.Optional;

/**
 * The time a file says it was captured, as found: local time of the camera's clock, with its fraction.
 * It is no instant unless the file gives an offset.
 *
 * @param time as recorded, with its fraction to the nanosecond; for a film's container UTC
 * @param fraction digits after the second as recorded, "" if none; kept since its length is evidence
 * @param offset recorded offset from UTC, if any
 * @param suspect true for a time in the future or a camera's reset date
 */
public record CaptureTime(
        LocalDateTime time, String fraction, Optional<ZoneOffset> offset, CaptureSource source, boolean suspect) {
    public CaptureTime {
        Objects.requireNonNull(time, "time");
        Objects.requireNonNull(fraction, "fraction");
        Objects.requireNonNull(offset, "offset");
        Objects.requireNonNull(source, "source");
    }
}
