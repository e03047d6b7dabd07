package quarterlight.visit.photo;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A photo, film, paper, sound or what lay beside one, as intake found it: its file, and what the file says of itself.
 *
 * @param name its name when it came, without folders
 * @param stored path within the visit folder, with {@code /}
 * @param bytes length of the file
 * @param type the file's format by its content: {@code JPEG}, {@code HEIC} …
 * @param captured time as recorded, if the file has one that can be
 * @param gpsUtc the satellite time the file carries, UTC, if complete
 * @param width pixels as shown upright, if known
 * @param height pixels as shown upright, if known
 * @param orientation Exif orientation 1 to 8; 1 if absent or out of range
 * @param seconds length of a film or sound
 * @param sharpness variance of the Laplacian at one fixed width; compare within the visit only
 * @param notes what was odd at intake, in sentences
 * @param contentId what ties a photo to its short film: both files carry it
 * @param more what only some media have
 */
public record PhotoFile(
        String name,
        String stored,
        Sha256 sha256,
        long bytes,
        MediaKind kind,
        String type,
        Optional<CaptureTime> captured,
        Optional<LocalDateTime> gpsUtc,
        Optional<Position> position,
        Optional<CameraId> camera,
        OptionalInt width,
        OptionalInt height,
        int orientation,
        OptionalDouble seconds,
        OptionalDouble sharpness,
        List<String> notes,
        Optional<String> contentId,
        MediaFacts more) {
    public PhotoFile {
        Objects.requireNonNull(sha256, "sha256");
        Objects.requireNonNull(kind, "kind");
        if (name.isEmpty() || stored.isEmpty() || bytes < 0) {
            throw new IllegalArgumentException("a photo has a file, a place in the visit and a length");
        }
        if (orientation < 1 || orientation > 8) {
            throw new IllegalArgumentException("an orientation is 1 to 8, not " + orientation);
        }
        Objects.requireNonNull(contentId, "contentId");
        Objects.requireNonNull(more, "more");
        notes = List.copyOf(notes);
    }

    /** A photo or film. */
    public PhotoFile(
            String name,
            String stored,
            Sha256 sha256,
            long bytes,
            MediaKind kind,
            String type,
            Optional<CaptureTime> captured,
            Optional<LocalDateTime> gpsUtc,
            Optional<Position> position,
            Optional<CameraId> camera,
            OptionalInt width,
            OptionalInt height,
            int orientation,
            OptionalDouble seconds,
            OptionalDouble sharpness,
            List<String> notes,
            Optional<String> contentId) {
        this(
                name,
                stored,
                sha256,
                bytes,
                kind,
                type,
                captured,
                gpsUtc,
                position,
                camera,
                width,
                height,
                orientation,
                seconds,
                sharpness,
                notes,
                contentId,
                MediaFacts.NONE);
    }

    /** The same file, with other facts of what only some media have. */
    public PhotoFile withMore(MediaFacts other) {
        return new PhotoFile(
                name,
                stored,
                sha256,
                bytes,
                kind,
                type,
                captured,
                gpsUtc,
                position,
                camera,
                width,
                height,
                orientation,
                seconds,
                sharpness,
                notes,
                contentId,
                other);
    }

    /** The length in the measure in which places within it are named: seconds, or pages of a paper; empty if it is not known. */
    public OptionalDouble extent() {
        return kind != MediaKind.PAPER
                ? seconds
                : more.pages().isPresent() ? OptionalDouble.of(more.pages().getAsInt()) : OptionalDouble.empty();
    }
}
