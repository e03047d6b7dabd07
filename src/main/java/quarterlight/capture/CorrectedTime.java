package quarterlight.capture;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Objects;

/**
 * When a photo was taken, after its camera's clock was set right.
 *
 * @param local local time at the visit, in its zone and with its offset
 * @param utc the same instant, offset zero
 * @param offset the offset from UTC at which the camera's clock was read
 * @param source from where that offset is known
 */
public record CorrectedTime(OffsetDateTime local, OffsetDateTime utc, ZoneOffset offset, OffsetSource source) {
    public CorrectedTime {
        Objects.requireNonNull(offset, "offset");
        Objects.requireNonNull(source, "source");
        if (!local.toInstant().equals(utc.toInstant()) || !utc.getOffset().equals(ZoneOffset.UTC)) {
            throw new IllegalArgumentException("one instant, told in two ways");
        }
    }
}
