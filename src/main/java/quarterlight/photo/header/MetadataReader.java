package quarterlight.photo.header;

import com.drew.lang.RandomAccessFileReader;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifDirectoryBase;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifReader;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.RandomAccessFile;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import quarterlight.photo.MediaType;
import quarterlight.photo.bytes.ByteView;
import quarterlight.photo.exif.EmbeddedPicture;
import quarterlight.photo.exif.ExifFacts;
import quarterlight.photo.exif.RawExif;
import quarterlight.visit.photo.CaptureSource;
import quarterlight.visit.photo.CaptureTime;
import quarterlight.visit.photo.MediaFacts;
import quarterlight.visit.photo.MediaHeader;
import quarterlight.visit.photo.MediaKind;

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
            case TIFF -> tiff(file);
            case PNG -> container(file, type, PngHeader::read);
            case WEBP -> container(file, type, WebpHeader::read);
            case HEIC, AVIF -> container(file, type, HeifHeader::read);
            case CR3, RAF, X3F -> raw(file, type);
            case MP4, MOV, THREE_GP, M4A, THREE_GP_SOUND -> film(file, type);
            case PDF, MP3, WAV, OGG, AMR, VTT, SRT, TIMED_TEXT, XMP ->
                throw new IllegalArgumentException(type + " is read by others");
        };
    }

    @FunctionalInterface
    private interface HeaderReading<T> {
        T of(ByteView file) throws IOException;
    }

    private FileFacts jpeg(Path file) throws IOException {
        JpegHeader header = JpegHeader.read(file);
        ExifFacts exif = ExifFacts.of(header.exif(), clock.instant());
        FileFacts facts = picture(MediaType.JPEG, exif, header.width(), header.height());
        return header.complete() && header.width().isPresent()
                ? facts
                : facts.damaged("The JPEG data is damaged; the file is kept, but it cannot be shown.");
    }

    private FileFacts container(Path file, MediaType type, HeaderReading<PictureHeader> reading) throws IOException {
        PictureHeader header = whatStands(file, reading, PictureHeader.UNREADABLE);
        ExifFacts exif = ExifFacts.of(header.exif(), clock.instant());
        FileFacts facts = picture(type, exif, header.width(), header.height());
        return header.width().isPresent()
                ? facts
                : facts.damaged("The " + type.word() + " data is damaged; the file is kept, but it cannot be shown.");
    }

    /** A camera's own format is shown by the JPEG in it, so that one's size counts. */
    private FileFacts raw(Path file, MediaType type) throws IOException {
        List<String> notes = new ArrayList<>();
        Optional<JpegHeader> shown = Optional.empty();
        Metadata metadata = new Metadata();
        List<byte[]> blocks = List.of();
        try (ByteView view = ByteView.open(file)) {
            Optional<EmbeddedPicture> found = EmbeddedPicture.of(view, type);
            if (found.isPresent()) {
                try (InputStream in = found.get().open(file)) {
                    shown = Optional.of(JpegHeader.read(in));
                }
            }
            if (type == MediaType.CR3) {
                RawExif.ofCr3(view, metadata, notes);
            } else {
                blocks = shown.map(JpegHeader::exif).orElse(List.of());
                RawExif.ofBlocks(blocks, metadata, notes);
            }
        }
        ExifFacts exif = ExifFacts.of(metadata, blocks, notes, clock.instant());
        OptionalInt width = shown.map(JpegHeader::width).orElse(OptionalInt.empty());
        FileFacts facts =
                picture(type, exif, width, shown.map(JpegHeader::height).orElse(OptionalInt.empty()));
        return width.isPresent()
                ? facts
                : facts.damaged("The " + type.word()
                        + " data is damaged, or holds no picture; the file is kept, but it cannot be shown.");
    }

    /** A TIFF file is one Exif structure with the picture in it. */
    private FileFacts tiff(Path file) throws IOException {
        Metadata metadata = new Metadata();
        List<String> notes = new ArrayList<>();
        try (RandomAccessFile data = new RandomAccessFile(file.toFile(), "r")) {
            new ExifReader().extract(new RandomAccessFileReader(data), metadata);
        } catch (RuntimeException | StackOverflowError e) {
            notes.add("The TIFF data is damaged; the file is kept.");
        }
        ExifFacts exif = ExifFacts.of(metadata, List.of(), notes, clock.instant());
        OptionalInt width = OptionalInt.empty();
        OptionalInt height = OptionalInt.empty();
        for (ExifIFD0Directory directory : metadata.getDirectoriesOfType(ExifIFD0Directory.class)) {
            Integer across = directory.getInteger(ExifDirectoryBase.TAG_IMAGE_WIDTH);
            Integer down = directory.getInteger(ExifDirectoryBase.TAG_IMAGE_HEIGHT);
            if (across != null && down != null && width.isEmpty()) {
                width = OptionalInt.of(across);
                height = OptionalInt.of(down);
            }
        }
        FileFacts facts = picture(MediaType.TIFF, exif, width, height);
        return width.isPresent() || !facts.notes().isEmpty()
                ? facts
                : facts.damaged("The TIFF data is damaged; the file is kept, but it cannot be shown.");
    }

    private FileFacts film(Path file, MediaType type) throws IOException {
        FilmHeader header = whatStands(file, FilmHeader::read, FilmHeader.UNREADABLE);
        List<String> notes = new ArrayList<>();
        Optional<CaptureTime> captured = header.created()
                .map(utc -> new CaptureTime(utc, "", Optional.of(ZoneOffset.UTC), CaptureSource.FILM, false))
                .map(time -> ExifFacts.believed(time, notes, clock.instant()));
        if (header.equals(FilmHeader.UNREADABLE)) {
            notes.add("The " + type.kind().word() + "'s container is damaged or incomplete; the file is kept.");
        }
        return new FileFacts(
                header.soundOnly() && type.kind() == MediaKind.FILM ? soundOf(type) : type,
                new MediaHeader(
                        captured,
                        Optional.empty(),
                        header.keys().position(),
                        header.keys().camera(),
                        header.width(),
                        header.height(),
                        1,
                        header.seconds(),
                        header.keys().contentId()),
                notes,
                Optional.empty(),
                MediaFacts.NONE);
    }

    /** Phones record memos into containers of films. */
    private static MediaType soundOf(MediaType film) {
        return film == MediaType.THREE_GP ? MediaType.THREE_GP_SOUND : MediaType.M4A;
    }

    /** A header's reading, or the given value if the file's data breaks off; failures of the disk are passed on. */
    private static <T> T whatStands(Path file, HeaderReading<T> reading, T otherwise) throws IOException {
        try (ByteView view = ByteView.open(file)) {
            return reading.of(view);
        } catch (EOFException e) {
            return otherwise;
        }
    }

    private static FileFacts picture(MediaType type, ExifFacts exif, OptionalInt width, OptionalInt height) {
        boolean known = width.isPresent() && height.isPresent() && width.getAsInt() > 0 && height.getAsInt() > 0;
        boolean turned = exif.orientation() >= 5 && type != MediaType.HEIC && type != MediaType.AVIF;
        return new FileFacts(
                type,
                new MediaHeader(
                        exif.captured(),
                        exif.gpsUtc(),
                        exif.position(),
                        exif.camera(),
                        !known ? OptionalInt.empty() : turned ? height : width,
                        !known ? OptionalInt.empty() : turned ? width : height,
                        exif.orientation(),
                        OptionalDouble.empty(),
                        exif.contentId()),
                exif.notes(),
                exif.preview(),
                MediaFacts.ofLens(exif.focal35Mm()));
    }
}
