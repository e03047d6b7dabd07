package quarterlight.edit.fact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quarterlight.capture.CorrectedTimes;
import quarterlight.edit.EditRefused;
import quarterlight.store.SampleVisit;
import quarterlight.store.VisitStore;
import quarterlight.visit.photo.CameraId;
import quarterlight.visit.photo.CaptureSource;
import quarterlight.visit.photo.CaptureTime;
import quarterlight.visit.photo.ClockSetting;
import quarterlight.visit.photo.MediaFacts;
import quarterlight.visit.photo.MediaHeader;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.PhotoId;

class ClockEditsTest {
    private static final CameraId CAMERA = new CameraId("birch-compact");

    @TempDir
    Path folder;

    private VisitStore store;
    private ClockEdits edits;
    private PhotoId photo;
    private PhotoId bare;

    @BeforeEach
    void open() throws Exception {
        store = VisitStore.create(folder.resolve("v"), SampleVisit.bareFacts(), SampleVisit.CLOCK);
        edits = new ClockEdits(store);
        photo = store.edit("take in", tx -> tx.addPhoto(still(1, LocalDateTime.of(2026, 3, 2, 9, 0, 0))));
        bare = store.edit("take in", tx -> tx.addPhoto(SampleVisit.barePhoto(2)));
    }

    @AfterEach
    void close() {
        store.close();
    }

    private static PhotoFile still(int number, LocalDateTime time) {
        PhotoFile bare = SampleVisit.barePhoto(number);
        return new PhotoFile(
                bare.name(),
                bare.stored(),
                bare.sha256(),
                bare.bytes(),
                bare.kind(),
                bare.type(),
                MediaHeader.NONE
                        .withCaptured(
                                Optional.of(new CaptureTime(time, "", Optional.empty(), CaptureSource.ORIGINAL, false)))
                        .withCamera(Optional.of(CAMERA))
                        .withSize(bare.width(), bare.height(), 1)
                        .withSeconds(bare.seconds()),
                bare.sharpness(),
                List.of(),
                MediaFacts.NONE);
    }

    @ParameterizedTest
    @CsvSource({"+01:00:00,PT1H", "-00:03:20,PT-3M-20S", "+17520:00:01,PT17520H1S", "' -01:30:00 ',PT-1H-30M"})
    void aShiftIsReadWithItsSign(String text, Duration expected) throws Exception {
        assertThat(ClockEdits.shift(text)).isEqualTo(expected);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "1:00:00", "+1:60:00", "+00:00", "+00:00:61", "an hour", "+9999999:00:00"})
    void whatIsNoShiftIsRefused(String text) {
        assertThatThrownBy(() -> ClockEdits.shift(text))
                .isInstanceOf(EditRefused.class)
                .hasMessageContaining("+HH:MM:SS");
    }

    @Test
    void aShiftMovesTheCorrectedTimeAndNotTheRecordedOne() throws Exception {
        edits.shift(CAMERA, Duration.ofMinutes(-90), Optional.empty());
        assertThat(corrected()).isEqualTo("2026-03-02T07:30-07:00");
        assertThat(store.read()
                        .photo(photo)
                        .orElseThrow()
                        .file()
                        .captured()
                        .orElseThrow()
                        .time())
                .isEqualTo(LocalDateTime.of(2026, 3, 2, 9, 0, 0));
        assertThat(store.undoLabel()).contains("set the clock of birch-compact");
        store.undo();
        assertThat(corrected()).isEqualTo("2026-03-02T09:00-07:00");
    }

    @Test
    void aPhotoOfAClockSetsTheCameraSoThatThePhotoAgrees() throws Exception {
        ClockSetting set = edits.fromPhoto(CAMERA, photo, LocalDateTime.of(2026, 3, 2, 10, 4, 7), Optional.empty());
        assertThat(set.shift()).isEqualTo(Duration.parse("PT1H4M7S"));
        assertThat(corrected()).isEqualTo("2026-03-02T10:04:07-07:00");
        edits.reset(CAMERA);
        assertThat(corrected()).isEqualTo("2026-03-02T09:00-07:00");
    }

    @Test
    void aCameraSetToAnotherZoneIsToldInTheZoneOfTheVisit() throws Exception {
        edits.shift(CAMERA, Duration.ZERO, Optional.of(ZoneId.of("America/New_York")));
        assertThat(corrected()).isEqualTo("2026-03-02T07:00-07:00");
    }

    @Test
    void camerasAndPhotosThatDoNotFitAreRefused() {
        assertThatThrownBy(() -> edits.shift(new CameraId("elm"), Duration.ZERO, Optional.empty()))
                .isInstanceOf(EditRefused.class)
                .hasMessageContaining("\"elm\"")
                .hasMessageContaining("birch-compact");
        LocalDateTime shows = LocalDateTime.of(2026, 3, 2, 10, 0);
        assertThatThrownBy(() -> edits.fromPhoto(CAMERA, bare, shows, Optional.empty()))
                .hasMessageContaining("was not taken by camera birch-compact");
        assertThatThrownBy(() -> edits.fromPhoto(CAMERA, new PhotoId(44), shows, Optional.empty()))
                .hasMessageContaining("no photo 44");
    }

    private String corrected() throws Exception {
        return CorrectedTimes.of(store.read()).of(photo).orElseThrow().local().toString();
    }
}
