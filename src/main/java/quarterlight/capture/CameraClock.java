package quarterlight.capture;

import java.time.Duration;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Objects;
import java.util.Optional;
import quarterlight.visit.photo.CameraId;

/**
 * What is known of one camera's clock.
 *
 * @param photos photos and films of this camera that have a time
 * @param shift added to every recorded time; zero if nobody set it
 * @param zone the zone the clock was set to, if the visit says so
 * @param offset offset of the camera as a whole, recorded or from satellite times; empty if the zone of the visit stands in
 * @param source from where the offset of this camera's photos is known, if they do not record one themselves
 * @param drift by how much the clock, after the shift, runs ahead of satellite time; empty without satellite times. Reported, never removed by itself
 * @param satellitePhotos photos with both a time and a satellite time
 * @param satelliteAgreeing those of them that agree on the offset
 */
public record CameraClock(
        CameraId camera,
        int photos,
        Duration shift,
        Optional<ZoneId> zone,
        Optional<ZoneOffset> offset,
        OffsetSource source,
        Optional<Duration> drift,
        int satellitePhotos,
        int satelliteAgreeing) {
    public CameraClock {
        Objects.requireNonNull(camera, "camera");
        Objects.requireNonNull(shift, "shift");
        Objects.requireNonNull(source, "source");
    }
}
