package quarterlight.photo.header;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import quarterlight.photo.MediaType;
import quarterlight.photo.exif.Preview;
import quarterlight.photo.originals.StoredOriginal;
import quarterlight.visit.photo.CameraId;
import quarterlight.visit.photo.CaptureTime;
import quarterlight.visit.photo.MediaFacts;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.Position;
import quarterlight.visit.photo.Sha256;

/**
 * What a photo, film, paper or sound says of itself.
 *
 * @param gpsUtc the satellite time, UTC, if date and time are there
 * @param width pixels as shown upright, from the picture's own header and never from Exif
 * @param height pixels as shown upright
 * @param orientation Exif orientation 1 to 8, 1 if absent; HEIC and AVIF are turned by their container instead
 * @param seconds length of a film or sound
 * @param notes what was odd, in sentences
 * @param preview the small JPEG that the file carries, in stored orientation, if any
 * @param contentId what ties a photo to its short film: both files carry it
 * @param more what only some media have
 */
public record FileFacts(
        MediaType type,
        Optional<CaptureTime> captured,
        Optional<LocalDateTime> gpsUtc,
        Optional<Position> position,
        Optional<CameraId> camera,
        OptionalInt width,
        OptionalInt height,
        int orientation,
        OptionalDouble seconds,
        List<String> notes,
        Optional<Preview> preview,
        Optional<String> contentId,
        MediaFacts more) {
    public FileFacts {
        Objects.requireNonNull(type, "type");
        Objects.requireNonNull(more, "more");
        notes = List.copyOf(notes);
    }

    /** Of a photo or film. */
    public FileFacts(
            MediaType type,
            Optional<CaptureTime> captured,
            Optional<LocalDateTime> gpsUtc,
            Optional<Position> position,
            Optional<CameraId> camera,
            OptionalInt width,
            OptionalInt height,
            int orientation,
            OptionalDouble seconds,
            List<String> notes,
            Optional<Preview> preview,
            Optional<String> contentId) {
        this(
                type,
                captured,
                gpsUtc,
                position,
                camera,
                width,
                height,
                orientation,
                seconds,
                notes,
                preview,
                contentId,
                MediaFacts.NONE);
    }

    /** Of a medium without a picture or a camera: its format and what was odd. */
    public static FileFacts of(MediaType type, MediaFacts more, List<String> notes) {
        return new FileFacts(
                type,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalInt.empty(),
                OptionalInt.empty(),
                1,
                OptionalDouble.empty(),
                notes,
                Optional.empty(),
                Optional.empty(),
                more);
    }

    /** The facts of what stands for itself. */
    public PhotoFile asPhotoFile(StoredOriginal original, OptionalDouble sharpness, List<String> moreNotes) {
        return asPhotoFile(original, sharpness, moreNotes, Optional.empty());
    }

    /** The facts as the visit keeps them, beside what became of the file. */
    public PhotoFile asPhotoFile(
            StoredOriginal original, OptionalDouble sharpness, List<String> moreNotes, Optional<Sha256> beside) {
        List<String> all = new ArrayList<>(notes);
        all.addAll(moreNotes);
        return new PhotoFile(
                original.name(),
                original.stored(),
                original.sha256(),
                original.bytes(),
                type.kind(),
                type.word(),
                captured,
                gpsUtc,
                position,
                camera,
                width,
                height,
                orientation,
                seconds,
                sharpness,
                all,
                contentId,
                more.beside(beside));
    }
}
