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
 * @param header what it says of its own taking
 * @param sharpness variance of the Laplacian at one fixed width; compare within the visit only
 * @param notes what was odd at intake, in sentences
 * @param more what only some media have
 */
public record PhotoFile(
        String name,
        String stored,
        Sha256 sha256,
        long bytes,
        MediaKind kind,
        String type,
        MediaHeader header,
        OptionalDouble sharpness,
        List<String> notes,
        MediaFacts more) {
    public PhotoFile {
        Objects.requireNonNull(sha256, "sha256");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(header, "header");
        Objects.requireNonNull(more, "more");
        if (name.isEmpty() || stored.isEmpty() || bytes < 0) {
            throw new IllegalArgumentException("a photo has a file, a place in the visit and a length");
        }
        notes = List.copyOf(notes);
    }

    /** The same file, with other facts of what only some media have. */
    public PhotoFile withMore(MediaFacts other) {
        return new PhotoFile(name, stored, sha256, bytes, kind, type, header, sharpness, notes, other);
    }

    /** Time as recorded, if the file has one that can be. */
    public Optional<CaptureTime> captured() {
        return header.captured();
    }

    /** The satellite time the file carries, UTC, if complete. */
    public Optional<LocalDateTime> gpsUtc() {
        return header.gpsUtc();
    }

    public Optional<Position> position() {
        return header.position();
    }

    public Optional<CameraId> camera() {
        return header.camera();
    }

    /** Pixels as shown upright, if known. */
    public OptionalInt width() {
        return header.width();
    }

    /** Pixels as shown upright, if known. */
    public OptionalInt height() {
        return header.height();
    }

    /** Exif orientation 1 to 8; 1 if absent or out of range. */
    public int orientation() {
        return header.orientation();
    }

    /** Length of a film or sound. */
    public OptionalDouble seconds() {
        return header.seconds();
    }

    /** What ties a photo to its short film: both files carry it. */
    public Optional<String> contentId() {
        return header.contentId();
    }

    /** The length in the measure in which places within it are named: seconds, or pages of a paper; empty if it is not known. */
    public OptionalDouble extent() {
        return kind != MediaKind.PAPER
                ? seconds()
                : more.pages().isPresent() ? OptionalDouble.of(more.pages().getAsInt()) : OptionalDouble.empty();
    }
}
