package quarterlight.photo.header;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TimeZone;
import org.apache.commons.csv.CSVRecord;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import quarterlight.photo.MediaType;
import quarterlight.photo.RealPhotos;
import quarterlight.photo.intake.FolderScan;
import quarterlight.task.Progress;
import quarterlight.visit.photo.CameraId;
import quarterlight.visit.photo.CaptureTime;

/** Reads the public sample files and compares with what another program says of them; see README beside expected.csv. */
class MetadataReferenceTest {
    private static final DateTimeFormatter EXIF = DateTimeFormatter.ofPattern("uuuu:MM:dd HH:mm:ss");
    private static final Clock LATER = Clock.fixed(Instant.parse("2027-01-01T00:00:00Z"), ZoneOffset.UTC);
    /** Odd even for the reference: no picture, or a size that its header does not state. */
    private static final List<String> NO_SIZE = List.of(
            "cameras/beach.jpg", "cameras/issue_1881_coverage.jpg", "cameras/5bc61724b33e34a6188a817f9f2f8138.jpg");

    /** Films that their container turns by a quarter: the reference gives the stored size (and, elsewhere, Rotation 90). */
    private static final List<String> TURNED_FILMS = List.of("cameras/with-gps.mov");

    private final MetadataReader reader = new MetadataReader(LATER);

    @Test
    void capturedTimesEqualTheReferenceInEveryZoneOfTheComputer() throws IOException {
        List<CSVRecord> rows = RealPhotos.expected();
        Path folder = RealPhotos.folder();
        TimeZone before = TimeZone.getDefault();
        try {
            for (String zone : List.of("UTC", "America/New_York", "Asia/Kathmandu", "Pacific/Auckland")) {
                TimeZone.setDefault(TimeZone.getTimeZone(zone));
                SoftAssertions soft = new SoftAssertions();
                for (CSVRecord row : rows) {
                    Optional<CaptureTime> captured = facts(folder, row).header().captured();
                    String want = row.get("best_capture_time_local");
                    soft.assertThat(captured.map(time -> time.time().withNano(0)))
                            .as(row.get("path"))
                            .isEqualTo(
                                    want.isEmpty() ? Optional.empty() : Optional.of(LocalDateTime.parse(want, EXIF)));
                    if (row.get("best_time_source").equals("DateTimeOriginal")) {
                        soft.assertThat(captured.map(CaptureTime::fraction))
                                .as(row.get("path"))
                                .hasValue(row.get("SubSecTimeOriginal"));
                        soft.assertThat(captured.flatMap(CaptureTime::offset)
                                        .map(ZoneOffset::getId)
                                        .orElse(""))
                                .as(row.get("path"))
                                .isEqualTo(row.get("OffsetTimeOriginal"));
                    }
                }
                soft.assertAll();
            }
        } finally {
            TimeZone.setDefault(before);
        }
    }

    @Test
    void sizesUprightAndOrientationEqualTheReference() throws IOException {
        SoftAssertions soft = new SoftAssertions();
        for (CSVRecord row : RealPhotos.expected()) {
            if (NO_SIZE.contains(row.get("path"))) {
                continue;
            }
            FileFacts facts = facts(RealPhotos.folder(), row);
            int orientation = row.get("orientation").isEmpty() ? 1 : Integer.parseInt(row.get("orientation"));
            OptionalInt width = OptionalInt.of(Integer.parseInt(row.get("width")));
            OptionalInt height = OptionalInt.of(Integer.parseInt(row.get("height")));
            soft.assertThat(facts.header().orientation()).as(row.get("path")).isEqualTo(orientation);
            boolean turned = orientation >= 5 || TURNED_FILMS.contains(row.get("path"));
            soft.assertThat(facts.header().width()).as(row.get("path")).isEqualTo(turned ? height : width);
            soft.assertThat(facts.header().height()).as(row.get("path")).isEqualTo(turned ? width : height);
        }
        soft.assertAll();
    }

    @Test
    void camerasEqualTheReference() throws IOException {
        SoftAssertions soft = new SoftAssertions();
        for (CSVRecord row : RealPhotos.expectedInFull()) {
            if (row.get("make").isEmpty() && row.get("model").isEmpty()) {
                continue;
            }
            String want = CameraId.of(Optional.of(row.get("make")), Optional.of(row.get("model")), Optional.empty())
                    .map(CameraId::value)
                    .orElse("");
            soft.assertThat(facts(RealPhotos.folder(), row)
                            .header()
                            .camera()
                            .map(CameraId::value)
                            .orElse(""))
                    .as(row.get("path"))
                    .startsWith(want);
        }
        soft.assertAll();
    }

    /** exiftool -Keys:all gives maker and model, 32 deg 5' 34.44" N, 34 deg 51' 43.20" E. */
    @Test
    void aPhonesFilmNamesItsCameraAndPlace() throws IOException {
        FileFacts facts = reader.read(RealPhotos.folder().resolve("cameras/with-gps.mov"), MediaType.MOV);
        assertThat(facts.header().camera()).isPresent();
        assertThat(facts.header().position().orElseThrow().latitude()).isCloseTo(32.0929, within(1e-4));
        assertThat(facts.header().position().orElseThrow().longitude()).isCloseTo(34.862, within(1e-4));
        assertThat(facts.header().seconds().orElseThrow()).isCloseTo(4.0, within(0.01));
    }

    @Test
    void everySampleIsTakenInOrRefusedWithAReason() {
        FolderScan scan = FolderScan.of(List.of(RealPhotos.folder()), Progress.NONE);
        assertThat(scan.media()).hasSize(122);
        assertThat(scan.refused()).isEmpty();
        assertThat(scan.notPhotos())
                .extracting(path -> path.getFileName().toString())
                .containsExactly("SOURCES.md", "expected.csv");
    }

    private FileFacts facts(Path folder, CSVRecord row) throws IOException {
        Path file = folder.resolve(row.get("path"));
        FolderScan scan = FolderScan.of(List.of(file), Progress.NONE);
        return reader.read(file, scan.media().get(0).type());
    }
}
