package quarterlight.visit.photo;

import java.time.LocalDateTime;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What a photo, film, paper or sound says of its own taking.
 *
 * @param captured time as recorded, if the file has one that can be
 * @param gpsUtc the satellite time the file carries, UTC, if date and time are there
 * @param width pixels as shown upright, from the picture's own header and never from Exif, if known
 * @param height pixels as shown upright, if known
 * @param orientation Exif orientation 1 to 8, 1 if absent or out of range; HEIC and AVIF are turned by their container instead
 * @param seconds length of a film or sound
 * @param contentId what ties a photo to its short film: both files carry it
 */
public record MediaHeader(
        Optional<CaptureTime> captured,
        Optional<LocalDateTime> gpsUtc,
        Optional<Position> position,
        Optional<CameraId> camera,
        OptionalInt width,
        OptionalInt height,
        int orientation,
        OptionalDouble seconds,
        Optional<String> contentId) {
    /** Of a file that says nothing. */
    public static final MediaHeader NONE = new MediaHeader(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            OptionalInt.empty(),
            OptionalInt.empty(),
            1,
            OptionalDouble.empty(),
            Optional.empty());

    public MediaHeader {
        Objects.requireNonNull(captured, "captured");
        Objects.requireNonNull(contentId, "contentId");
        if (orientation < 1 || orientation > 8) {
            throw new IllegalArgumentException("an orientation is 1 to 8, not " + orientation);
        }
    }

    public MediaHeader withCaptured(Optional<CaptureTime> time) {
        return new MediaHeader(time, gpsUtc, position, camera, width, height, orientation, seconds, contentId);
    }

    public MediaHeader withGpsUtc(Optional<LocalDateTime> time) {
        return new MediaHeader(captured, time, position, camera, width, height, orientation, seconds, contentId);
    }

    public MediaHeader withPosition(Optional<Position> place) {
        return new MediaHeader(captured, gpsUtc, place, camera, width, height, orientation, seconds, contentId);
    }

    public MediaHeader withCamera(Optional<CameraId> id) {
        return new MediaHeader(captured, gpsUtc, position, id, width, height, orientation, seconds, contentId);
    }

    /** @param turned Exif orientation 1 to 8 */
    public MediaHeader withSize(OptionalInt widthPx, OptionalInt heightPx, int turned) {
        return new MediaHeader(captured, gpsUtc, position, camera, widthPx, heightPx, turned, seconds, contentId);
    }

    public MediaHeader withSeconds(OptionalDouble length) {
        return new MediaHeader(captured, gpsUtc, position, camera, width, height, orientation, length, contentId);
    }

    public MediaHeader withContentId(Optional<String> id) {
        return new MediaHeader(captured, gpsUtc, position, camera, width, height, orientation, seconds, id);
    }
}
