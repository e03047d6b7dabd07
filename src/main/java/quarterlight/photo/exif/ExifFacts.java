package quarterlight.photo.exif;

import com.drew.lang.GeoLocation;
import com.drew.lang.Rational;
import com.drew.metadata.Directory;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifDirectoryBase;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifSubIFDDirectory;
import com.drew.metadata.exif.ExifThumbnailDirectory;
import com.drew.metadata.exif.GpsDirectory;
import com.drew.metadata.exif.makernotes.AppleMakernoteDirectory;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import quarterlight.capture.Plausibility;
import quarterlight.capture.TimeText;
import quarterlight.visit.photo.CameraId;
import quarterlight.visit.photo.CaptureSource;
import quarterlight.visit.photo.CaptureTime;
import quarterlight.visit.photo.Position;

/**
 * What Exif blocks say, read from the raw strings: no date passes through the library's own parsing, which would bring in the
 * computer's time zone.
 */
public record ExifFacts(
        Optional<CaptureTime> captured,
        Optional<LocalDateTime> gpsUtc,
        Optional<Position> position,
        Optional<CameraId> camera,
        int orientation,
        Optional<Preview> preview,
        Optional<String> contentId,
        OptionalDouble focal35Mm,
        List<String> notes) {
    private static final int MAX_PREVIEW_BYTES = 4 << 20;

    public ExifFacts {
        notes = List.copyOf(notes);
    }

    /** Reads Exif blocks, each a TIFF structure; later blocks fill in what earlier ones lack. */
    public static ExifFacts of(List<byte[]> blocks, Instant now) {
        Metadata metadata = new Metadata();
        List<String> notes = new ArrayList<>();
        RawExif.ofBlocks(blocks, metadata, notes);
        return of(metadata, blocks, notes, now);
    }

    public static ExifFacts of(Metadata metadata, List<byte[]> blocks, List<String> notes, Instant now) {
        return new ExifFacts(
                captured(metadata, notes, now),
                gpsUtc(metadata, notes),
                position(metadata),
                camera(metadata),
                orientation(metadata),
                preview(metadata, blocks),
                first(metadata, AppleMakernoteDirectory.class, AppleMakernoteDirectory.TAG_CONTENT_IDENTIFIER),
                LensOfExif.focal35Mm(metadata),
                notes);
    }

    private static Optional<CaptureTime> captured(Metadata metadata, List<String> notes, Instant now) {
        Optional<CaptureTime> original = time(
                metadata,
                CaptureSource.ORIGINAL,
                ExifDirectoryBase.TAG_DATETIME_ORIGINAL,
                ExifDirectoryBase.TAG_SUBSECOND_TIME_ORIGINAL,
                ExifDirectoryBase.TAG_TIME_ZONE_ORIGINAL,
                notes);
        Optional<CaptureTime> found = original.isPresent()
                ? original
                : time(
                        metadata,
                        CaptureSource.DIGITIZED,
                        ExifDirectoryBase.TAG_DATETIME_DIGITIZED,
                        ExifDirectoryBase.TAG_SUBSECOND_TIME_DIGITIZED,
                        ExifDirectoryBase.TAG_TIME_ZONE_DIGITIZED,
                        notes);
        return found.map(time -> believed(time, notes, now));
    }

    /** The time with the flag that it is suspect, and a note why. */
    /** Flags a time that cannot be, and says so. */
    public static CaptureTime believed(CaptureTime time, List<String> notes, Instant now) {
        Optional<String> doubt = Plausibility.doubt(time.time(), time.offset(), now);
        doubt.ifPresent(notes::add);
        return new CaptureTime(time.time(), time.fraction(), time.offset(), time.source(), doubt.isPresent());
    }

    private static Optional<CaptureTime> time(
            Metadata metadata, CaptureSource source, int timeTag, int fractionTag, int offsetTag, List<String> notes) {
        String tag = source == CaptureSource.ORIGINAL ? "DateTimeOriginal" : "DateTimeDigitized";
        for (ExifSubIFDDirectory directory : metadata.getDirectoriesOfType(ExifSubIFDDirectory.class)) {
            Optional<String> raw = text(directory, timeTag);
            if (raw.isEmpty()) {
                continue;
            }
            TimeText read = TimeText.parse(raw.get());
            if (read.time().isEmpty()) {
                notes.add(tag + " " + read.complaint() + "; it counts as absent.");
                continue;
            }
            String fraction =
                    text(directory, fractionTag).flatMap(TimeText::fraction).orElse("");
            Optional<ZoneOffset> offset = text(directory, offsetTag).flatMap(TimeText::offset);
            if (offset.isEmpty()
                    && text(directory, offsetTag)
                            .filter(o -> !o.replace(":", "").isBlank())
                            .isPresent()) {
                notes.add("The recorded offset from UTC is malformed; it counts as absent.");
            }
            return Optional.of(new CaptureTime(
                    TimeText.withFraction(read.time().get(), fraction), fraction, offset, source, false));
        }
        return Optional.empty();
    }

    private static Optional<LocalDateTime> gpsUtc(Metadata metadata, List<String> notes) {
        for (GpsDirectory gps : metadata.getDirectoriesOfType(GpsDirectory.class)) {
            Optional<String> date = text(gps, GpsDirectory.TAG_DATE_STAMP);
            Rational[] parts = gps.getRationalArray(GpsDirectory.TAG_TIME_STAMP);
            if (date.isEmpty() || parts == null || parts.length != 3) {
                continue;
            }
            Optional<LocalDateTime> midnight =
                    TimeText.parse(date.get().strip() + " 00:00:00").time();
            double seconds = parts[0].doubleValue() * 3600 + parts[1].doubleValue() * 60 + parts[2].doubleValue();
            if (midnight.isPresent() && seconds >= 0 && seconds < 86_400) {
                long nanos = Math.round(seconds * 1000) * 1_000_000L;
                return Optional.of(midnight.get().plusNanos(Math.min(nanos, LocalTime.MAX.toNanoOfDay())));
            }
            notes.add("The satellite time is zero, malformed or impossible; it counts as absent.");
        }
        return Optional.empty();
    }

    private static Optional<Position> position(Metadata metadata) {
        for (GpsDirectory gps : metadata.getDirectoriesOfType(GpsDirectory.class)) {
            GeoLocation place = gps.getGeoLocation();
            if (place != null
                    && !place.isZero()
                    && Math.abs(place.getLatitude()) <= 90
                    && Math.abs(place.getLongitude()) <= 180) {
                return Optional.of(new Position(place.getLatitude(), place.getLongitude()));
            }
        }
        return Optional.empty();
    }

    private static Optional<CameraId> camera(Metadata metadata) {
        return CameraId.of(
                first(metadata, ExifIFD0Directory.class, ExifDirectoryBase.TAG_MAKE),
                first(metadata, ExifIFD0Directory.class, ExifDirectoryBase.TAG_MODEL),
                first(metadata, ExifSubIFDDirectory.class, ExifDirectoryBase.TAG_BODY_SERIAL_NUMBER));
    }

    private static int orientation(Metadata metadata) {
        for (ExifIFD0Directory directory : metadata.getDirectoriesOfType(ExifIFD0Directory.class)) {
            Integer found = directory.getInteger(ExifDirectoryBase.TAG_ORIENTATION);
            if (found != null) {
                return found >= 1 && found <= 8 ? found : 1;
            }
        }
        return 1;
    }

    private static Optional<Preview> preview(Metadata metadata, List<byte[]> blocks) {
        for (ExifThumbnailDirectory directory : metadata.getDirectoriesOfType(ExifThumbnailDirectory.class)) {
            Integer offset = directory.getInteger(ExifThumbnailDirectory.TAG_THUMBNAIL_OFFSET);
            Integer length = directory.getInteger(ExifThumbnailDirectory.TAG_THUMBNAIL_LENGTH);
            if (offset == null || length == null || offset < 0 || length < 4 || length > MAX_PREVIEW_BYTES) {
                continue;
            }
            for (byte[] block : blocks) {
                if ((long) offset + length <= block.length
                        && (block[offset] & 0xFF) == 0xFF
                        && (block[offset + 1] & 0xFF) == 0xD8) {
                    return Optional.of(new Preview(Arrays.copyOfRange(block, offset, offset + length)));
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<String> first(Metadata metadata, Class<? extends Directory> type, int tag) {
        return metadata.getDirectoriesOfType(type).stream()
                .flatMap(directory -> text(directory, tag).stream())
                .map(String::strip)
                .filter(text -> !text.isEmpty())
                .findFirst();
    }

    /** A tag's text up to its terminating zero; empty if the tag is not there. */
    private static Optional<String> text(Directory directory, int tag) {
        return Optional.ofNullable(directory.getString(tag)).map(text -> {
            int end = text.indexOf('\0');
            return end < 0 ? text : text.substring(0, end);
        });
    }
}
