package quarterlight.photo.header;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.photo.MediaType;
import quarterlight.photo.SamplePictures;

class MetadataReaderTest {
    private static final Instant NOW = Instant.parse("2026-05-04T12:00:00Z");

    @TempDir
    Path folder;

    private final MetadataReader reader = new MetadataReader(Clock.fixed(NOW, ZoneOffset.UTC));

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            nullValues = "",
            value = {
                "the original time comes first | 2026:05:04 10:00:00 | 2026:05:04 11:00:00 | 2026-05-04T10:00 ORIGINAL false |",
                "the digitized time stands in | | 2026:05:04 11:00:00 | 2026-05-04T11:00 DIGITIZED false |",
                "no time is no time, whatever ModifyDate says | | | |",
                "zero is absent | 0000:00:00 00:00:00 | | | is zero",
                "blanks are absent | '    :  :     :  :  ' | 2026:05:04 11:00:00 | 2026-05-04T11:00 DIGITIZED false | is blank",
                "words are absent | yesterday at noon!! | | | is malformed",
                "a February 30th is absent | 2026:02:30 10:00:00 | | | is impossible",
                "an hour 25 is absent | 2026:02:20 25:00:00 | | | is impossible",
                "the future is kept and flagged | 2031:05:04 10:00:00 | | 2031-05-04T10:00 ORIGINAL true | in the future",
                "a reset clock is kept and flagged | 2012:01:01 00:03:10 | | 2012-01-01T00:03:10 ORIGINAL true | was reset",
                "half a day ahead may be another zone | 2026:05:05 01:00:00 | | 2026-05-05T01:00 ORIGINAL false |"
            })
    void readsTheCaptureTime(String what, String original, String digitized, String want, String note)
            throws IOException {
        byte[] jpeg = SamplePictures.withExif(SamplePictures.jpeg(64, 48, 1), text(original), text(digitized), 1);
        FileFacts facts = reader.read(written("a.jpg", jpeg), MediaType.JPEG);
        assertThat(facts.header()
                        .captured()
                        .map(time -> time.time() + " " + time.source() + " " + time.suspect())
                        .orElse(""))
                .as(what)
                .isEqualTo(text(want));
        if (note == null) {
            assertThat(facts.notes()).as(what).isEmpty();
        } else {
            assertThat(String.join(" ", facts.notes())).as(what).contains(note.strip());
        }
    }

    @Test
    void theModificationTimeOfTheFileChangesNothing() throws IOException {
        byte[] jpeg = SamplePictures.withExif(SamplePictures.jpeg(64, 48, 1), "", "", 1);
        Path file = written("a.jpg", jpeg);
        FileFacts before = reader.read(file, MediaType.JPEG);
        Files.setLastModifiedTime(file, FileTime.from(Instant.parse("1999-09-09T09:09:09Z")));
        assertThat(reader.read(file, MediaType.JPEG).header().captured())
                .isEqualTo(before.header().captured())
                .isEmpty();
    }

    @Test
    void theSizeUprightComesFromThePictureAndItsOrientation() throws IOException {
        byte[] jpeg = SamplePictures.withExif(SamplePictures.jpeg(64, 48, 1), "", "", 6);
        FileFacts facts = reader.read(written("a.jpg", jpeg), MediaType.JPEG);
        assertThat(facts.header().width()).hasValue(48);
        assertThat(facts.header().height()).hasValue(64);
        assertThat(facts.header().orientation()).isEqualTo(6);
        assertThat(facts.header().camera().map(Object::toString)).hasValue("lumenary-field-3");
    }

    @Test
    void aFilmWhoseCreationTimeIsUnsetHasNone() throws IOException {
        assertThat(FilmHeader.time(0)).isEmpty();
        assertThat(FilmHeader.time(3_675_067_200L).map(Object::toString)).hasValue("2020-06-15T12:00");
        assertThat(FilmHeader.time(4_294_967_295L).map(Object::toString)).hasValue("2040-02-06T06:28:15");
    }

    @Test
    void aFileThatEndsAfterItsFirstBytesIsANote() throws IOException {
        for (MediaType type : MediaType.values()) {
            if (!type.kind().isCameras()) {
                continue;
            }
            FileFacts facts = reader.read(written("x", new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF}), type);
            assertThat(facts.header().captured()).isEmpty();
            assertThat(facts.notes().stream().collect(Collectors.joining()))
                    .as(type.word())
                    .contains("damaged");
        }
    }

    private Path written(String name, byte[] bytes) throws IOException {
        return Files.write(folder.resolve(name), bytes);
    }

    private static String text(String cell) {
        return cell == null ? "" : cell;
    }
}
