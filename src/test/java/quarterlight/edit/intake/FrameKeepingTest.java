package quarterlight.edit.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.capture.CorrectedTimes;
import quarterlight.edit.EditRefused;
import quarterlight.edit.fact.FactEdits;
import quarterlight.photo.MediaType;
import quarterlight.photo.film.FilmFrames;
import quarterlight.photo.originals.Digests;
import quarterlight.photo.originals.OriginalsAudit;
import quarterlight.photo.worker.DecodingWorkers;
import quarterlight.store.VisitStore;
import quarterlight.table.ZoneTable;
import quarterlight.task.Progress;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.PhotoId;

/** A frame kept of a film whose frames carry their number as a gray level, 25 a second, begun at 10:02:00 UTC. */
class FrameKeepingTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-02T10:15:30Z"), ZoneOffset.UTC);

    @TempDir
    Path folder;

    private Path source;
    private VisitStore store;
    private PhotoId film;
    private FrameKeeping keeping;
    private final DecodingWorkers workers = new DecodingWorkers();

    @BeforeEach
    void takeTheFilmIn() throws Exception {
        assumeTrue(FilmFrames.available(), "built without native parts");
        source = Files.createDirectories(folder.resolve("card")).resolve("VID_0007.MP4");
        Files.copy(
                Path.of(Objects.requireNonNull(MediaType.class.getResource("numbered-dated.mp4"))
                        .toURI()),
                source);
        store = VisitStore.create(
                folder.resolve("visit"),
                new FactEdits(ZoneTable.load())
                        .start(
                                Map.of("car", "Tamarisk", "style", "coupe", "timezone", "America/Denver"),
                                ZoneOffset.UTC),
                CLOCK);
        new Intake(store, CLOCK, (photo, jpeg) -> {}).run(List.of(source.getParent()), Progress.NONE);
        film = store.read().photos().get(0).id();
        keeping = new FrameKeeping(store, CLOCK, (photo, jpeg) -> {}, workers);
    }

    @AfterEach
    void close() {
        workers.close();
        if (store != null) {
            store.close();
        }
    }

    @Test
    void theFrameIsTheOneShownAtTheMomentAndNamesFilmAndTime() throws Exception {
        PhotoId kept = keeping.keep(film, 1.29);
        PhotoFile file = store.read().photo(kept).orElseThrow().file();
        BufferedImage picture =
                ImageIO.read(folder.resolve("visit").resolve(file.stored()).toFile());
        double number = (picture.getRGB(picture.getWidth() / 2, picture.getHeight() / 2) >> 8 & 255) * 219 / 255.0 / 4;
        assertThat(number).isCloseTo(32, within(0.45));
        assertThat(file.kind()).isEqualTo(MediaKind.PHOTO);
        assertThat(file.name()).isEqualTo("VID_0007.MP4 at 1.280 s.png");
        assertThat(file.notes().get(0))
                .contains("VID_0007.MP4", Digests.of(source).toString(), "1.280 s");
        assertThat(CorrectedTimes.of(store.read()).of(kept).orElseThrow().local())
                .hasToString("2026-02-28T03:02:01.280-07:00");
    }

    @Test
    void theFilmStaysUntouchedAndTheFrameIsAuditedLikeAnyOriginal() throws Exception {
        PhotoFile before = store.read().photo(film).orElseThrow().file();
        PhotoId kept = keeping.keep(film, 0.5);
        assertThat(store.read().photo(film).orElseThrow().file()).isEqualTo(before);
        Path visit = folder.resolve("visit");
        assertThat(Digests.of(visit.resolve(before.stored()))).isEqualTo(before.sha256());
        PhotoFile frame = store.read().photo(kept).orElseThrow().file();
        assertThat(Digests.of(visit.resolve(frame.stored()))).isEqualTo(frame.sha256());
        OriginalsAudit audit = OriginalsAudit.of(
                visit, store.read().photos().stream().map(Photo::file).toList(), Progress.NONE);
        assertThat(audit.ok()).isTrue();
        assertThat(audit.unreferenced()).isEmpty();
    }

    @Test
    void keepingItTwiceKeepsItOnceAndUndoTakesItBack() throws Exception {
        PhotoId kept = keeping.keep(film, 0.5);
        assertThat(keeping.keep(film, 0.51)).isEqualTo(kept);
        assertThat(store.read().photos()).hasSize(2);
        assertThat(store.undoLabel()).contains("keep a frame of VID_0007.MP4");
        store.undo();
        assertThat(store.read().photos()).hasSize(1);
    }

    @Test
    void whatHasNoSuchMomentIsRefusedInASentence() throws Exception {
        assertThatThrownBy(() -> keeping.keep(film, 2.5))
                .isInstanceOf(EditRefused.class)
                .hasMessageContaining("2.0 s long");
        PhotoId photo = keeping.keep(film, 0);
        assertThatThrownBy(() -> keeping.keep(photo, 0))
                .isInstanceOf(EditRefused.class)
                .hasMessageContaining("is a photo");
        assertThat(store.read().photos()).hasSize(2);
    }
}
