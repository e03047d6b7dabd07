package quarterlight.visit.photo;

import java.time.Duration;
import java.time.ZoneId;
import java.util.Objects;
import java.util.Optional;

/**
 * How one camera's clock was set right.
 *
 * @param shift added to every time the camera recorded
 * @param zone the zone its clock was set to, if not the visit's
 */
public record ClockSetting(CameraId camera, Duration shift, Optional<ZoneId> zone) {
    public ClockSetting {
        Objects.requireNonNull(camera, "camera");
        Objects.requireNonNull(shift, "shift");
        Objects.requireNonNull(zone, "zone");
    }
}
