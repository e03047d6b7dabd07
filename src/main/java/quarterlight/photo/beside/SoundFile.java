package quarterlight.photo.beside;

import java.io.IOException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quarterlight.photo.MediaType;
import quarterlight.photo.exif.ExifFacts;
import quarterlight.photo.film.MediaFile;
import quarterlight.photo.header.FileFacts;
import quarterlight.visit.photo.CaptureSource;
import quarterlight.visit.photo.CaptureTime;
import quarterlight.visit.photo.MediaFacts;
import quarterlight.visit.photo.MediaHeader;

/**
 * Length and recorded time of a sound that is no ISO base media file. The time comes from the tag that names a moment to the minute at least; a tag that names
 * a year or a day only tells of the music, not of the recording, and is left alone.
 */
public final class SoundFile {
    /** Years, months and days with a time behind them; a fraction and an offset may follow. */
    private static final Pattern MOMENT = Pattern.compile("(\\d{4})[-:/](\\d{2})[-:/](\\d{2})[T"
            + " ](\\d{2}):(\\d{2})(?::(\\d{2})(?:[.,](\\d{1,9}))?)?\\s*(Z|[+-]\\d{2}:?\\d{2})?");

    private SoundFile() {}

    /** @param now says when a recorded time lies in the future */
    public static FileFacts facts(Path file, MediaType type, Instant now) throws IOException {
        List<String> notes = new ArrayList<>();
        Optional<CaptureTime> captured = Optional.empty();
        OptionalDouble seconds = OptionalDouble.empty();
        if (!MediaFile.available()) {
            notes.add("The length of the sound cannot be read here, since the native part for it is not installed.");
        } else {
            try (MediaFile media = MediaFile.openSound(file, type)) {
                seconds = media.seconds();
                captured = recorded(media.tags()).map(time -> ExifFacts.believed(time, notes, now));
            } catch (IOException e) {
                notes.add("The sound's data is damaged or incomplete; the file is kept.");
            }
        }
        return new FileFacts(
                type,
                MediaHeader.NONE.withCaptured(captured).withSeconds(seconds),
                notes,
                Optional.empty(),
                MediaFacts.NONE);
    }

    /** The time in the tags of a sound, by their names in lower case; the chunk of broadcast waves (EBU Tech 3285) tells day and time apart. */
    static Optional<CaptureTime> recorded(Map<String, String> tags) {
        String day = tags.getOrDefault("date", "");
        String time = tags.getOrDefault("creation_time", "");
        return List.of(time, day + " " + time, day).stream()
                .flatMap(text -> moment(text).stream())
                .findFirst();
    }

    private static Optional<CaptureTime> moment(String text) {
        Matcher m = MOMENT.matcher(text.strip());
        if (!m.matches()) {
            return Optional.empty();
        }
        try {
            LocalDateTime time = LocalDateTime.of(
                    Integer.parseInt(m.group(1)),
                    Integer.parseInt(m.group(2)),
                    Integer.parseInt(m.group(3)),
                    Integer.parseInt(m.group(4)),
                    Integer.parseInt(m.group(5)),
                    m.group(6) == null ? 0 : Integer.parseInt(m.group(6)));
            Optional<ZoneOffset> offset = Optional.ofNullable(m.group(8)).map(ZoneOffset::of);
            String fraction = Optional.ofNullable(m.group(7)).orElse("");
            return Optional.of(new CaptureTime(time, fraction, offset, CaptureSource.TAG, false));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
