package quarterlight.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.cli.TestPhotos;
import quarterlight.edit.intake.IntakeRefused;
import quarterlight.edit.intake.IntakeResult;
import quarterlight.photo.originals.OriginalsFolder;
import quarterlight.photo.worker.DecodingWorkers;
import quarterlight.photo.worker.WorkerLimits;
import quarterlight.task.Progress;
import quarterlight.visit.photo.PhotoFile;

/** Cards with files that were made to do harm: the others are in, each loss is told with its file's name. */
@Timeout(240)
class HostileIntakeTest {
    private static final List<String> HOSTILE =
            List.of("jpg-preview-26000.jpg", "jpg-preview-65500.jpg", "tif-chained-directories.tif");

    @TempDir
    Path folder;

    private VisitAndCard at;
    private Path card;
    private Path visit;

    @BeforeEach
    void makeAVisit() throws Exception {
        at = VisitAndCard.in(folder);
        card = at.card();
        visit = at.visit();
        TestPhotos.write(card.resolve("IMG_001.JPG"), 1, "2026:02:28 10:00:00");
        TestPhotos.write(card.resolve("z/IMG_002.JPG"), 2, "2026:02:28 10:00:01");
    }

    private void copy(Class<?> beside, String name, Path to) throws IOException {
        Files.createDirectories(to.getParent());
        try (InputStream in = beside.getResourceAsStream(name)) {
            Files.copy(in, to);
        }
    }

    @Test
    void hostileFilesAreKeptWithANoteAndTheOthersAreIn() throws Exception {
        for (String name : HOSTILE) {
            copy(DecodingWorkers.class, name, card.resolve(name));
        }
        IntakeResult result;
        try (DecodingWorkers workers = new DecodingWorkers()) {
            result = at.takeIn(workers, Progress.NONE);
        }
        assertThat(result.refused()).isEmpty();
        assertThat(result.added()).isEqualTo(2 + HOSTILE.size());
        assertThat(at.sound())
                .filteredOn(file -> HOSTILE.contains(file.name()))
                .hasSize(HOSTILE.size())
                .allMatch(file -> !file.notes().isEmpty());
    }

    @Test
    void aFileThatTakesTooLongIsRefusedByNameAndTheOthersAreIn() throws Exception {
        Path slow = card.resolve("b/slow.jpg");
        copy(DecodingWorkers.class, "jpg-scans-small.jpg", slow);
        WorkerLimits hasty = new WorkerLimits(72, 160, Duration.ofSeconds(1));
        IntakeResult result;
        try (DecodingWorkers workers = new DecodingWorkers(hasty, WorkerLimits.ALONE)) {
            result = at.takeIn(workers, Progress.NONE);
        }
        assertThat(result.refused()).singleElement().satisfies(refusal -> {
            assertThat(refusal.file()).isEqualTo(slow);
            assertThat(refusal.reason()).isEqualTo("decoding it took more than 1 s and was stopped");
        });
        assertThat(at.sound()).extracting(PhotoFile::name).containsExactly("IMG_001.JPG", "IMG_002.JPG");
    }

    @Test
    void anIntakeIsCancelledWhileAFileTakesItsTime() throws Exception {
        copy(DecodingWorkers.class, "jpg-scans-small.jpg", card.resolve("slow.jpg"));
        Progress once = new Progress() {
            private volatile boolean slow;

            @Override
            public void report(int done, int total, String what) {
                slow = what.equals("slow.jpg");
            }

            @Override
            public boolean cancelled() {
                return slow;
            }
        };
        try (DecodingWorkers workers = new DecodingWorkers()) {
            assertThatThrownBy(() -> at.takeIn(workers, once)).isInstanceOf(CancellationException.class);
        }
        at.sound();
    }

    @Test
    void twoCardsWithPhotosWhoseDigestsBeginAlikeAreBothTakenIn() throws Exception {
        copy(OriginalsFolder.class, "alike-1.jpg", card.resolve("card1/IMG_0001.JPG"));
        copy(OriginalsFolder.class, "alike-2.jpg", card.resolve("card2/IMG_0001.JPG"));
        try (DecodingWorkers workers = new DecodingWorkers()) {
            assertThat(at.takeIn(workers, Progress.NONE).added()).isEqualTo(4);
        }
        List<PhotoFile> alike = at.sound().stream()
                .filter(file -> file.name().equals("IMG_0001.JPG"))
                .toList();
        assertThat(alike).hasSize(2);
        assertThat(alike.get(0).sha256().prefix())
                .isEqualTo(alike.get(1).sha256().prefix());
        assertThat(alike.get(0).stored()).isNotEqualTo(alike.get(1).stored());
    }

    @Test
    void aLinkedFolderOfOriginalsEndsTheIntakeInASentence() throws Exception {
        Path elsewhere = Files.createDirectories(folder.resolve("elsewhere"));
        Files.deleteIfExists(visit.resolve("originals"));
        Files.createSymbolicLink(visit.resolve("originals"), elsewhere);
        try (DecodingWorkers workers = new DecodingWorkers()) {
            assertThatThrownBy(() -> at.takeIn(workers, Progress.NONE)).hasMessageContaining("originals is a link");
        }
        assertThat(elsewhere).isEmptyDirectory();
    }

    @Test
    void whereNoWorkerCanBeStartedNothingIsTakenInAndNothingLost() throws Exception {
        assertThat(at.takeIn(Progress.NONE).added()).isEqualTo(2);
        TestPhotos.write(card.resolve("IMG_003.JPG"), 3, "2026:02:28 10:00:02");
        byte[] before = Files.readAllBytes(card.resolve("IMG_003.JPG"));
        String home = System.getProperty("java.home");
        System.setProperty("java.home", folder.resolve("gone").toString());
        try {
            assertThatThrownBy(() -> at.takeIn(Progress.NONE))
                    .isInstanceOf(IntakeRefused.class)
                    .hasMessageContaining("IMG_003.JPG")
                    .hasMessageContaining("the process that decodes pictures cannot be started")
                    .hasMessageContaining("what was taken in before stays")
                    .hasMessageEndingWith("take the rest in again.");
        } finally {
            System.setProperty("java.home", home);
        }
        assertThat(at.sound()).extracting(PhotoFile::name).containsExactly("IMG_001.JPG", "IMG_002.JPG");
        assertThat(card.resolve("IMG_003.JPG")).hasBinaryContent(before);
        assertThat(at.takeIn(Progress.NONE).added()).isEqualTo(1);
        assertThat(at.sound()).hasSize(3);
    }
}
