package quarterlight.photo;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * Reads what photos and films say of themselves: capture time, camera, place, size, orientation. Damage is a note, not a failure.
 * <p>A photo's time is Exif DateTimeOriginal, else DateTimeDigitized, else none; a film's is the creation time of its container, in UTC.
 * The file's modification time and Exif's ModifyDate are never used.
 */
public final class MetadataReader {
    private final Clock clock;

    /** @param clock says when a recorded time lies in the future */
    public MetadataReader(Clock clock) {
        this.clock = clock;
    }

    /** @throws IOException if the file cannot be read at all */
    public FileFacts read(Path file, MediaType type) throws IOException {
        return switch (type) {
            case JPEG -> jpeg(file);
            default -> nothingKnown(type);
        };
    }

    private FileFacts jpeg(Path file) throws IOException {
        JpegHeader header = JpegHeader.read(file);
        ExifFacts exif = ExifFacts.of(header.exif(), clock.instant());
        List<String> notes = new ArrayList<>(exif.notes());
        if (!header.complete() || header.width().isEmpty()) {
            notes.add("The JPEG data is damaged; the file is kept, but it cannot be shown.");
        }
        return picture(MediaType.JPEG, exif, header.width(), header.height(), exif.orientation(), notes);
    }

    private static FileFacts picture(
            MediaType type,
            ExifFacts exif,
            OptionalInt width,
            OptionalInt height,
            int orientation,
            List<String> notes) {
        boolean known = width.isPresent() && height.isPresent() && width.getAsInt() > 0 && height.getAsInt() > 0;
        boolean turned = orientation >= 5;
        return new FileFacts(
                type,
                exif.captured(),
                exif.gpsUtc(),
                exif.position(),
                exif.camera(),
                !known ? OptionalInt.empty() : turned ? height : width,
                !known ? OptionalInt.empty() : turned ? width : height,
                orientation,
                OptionalDouble.empty(),
                notes,
                exif.preview());
    }

    private static FileFacts nothingKnown(MediaType type) {
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
                List.of(type.word() + " cannot be shown yet; the file is kept."),
                Optional.empty());
    }
}
