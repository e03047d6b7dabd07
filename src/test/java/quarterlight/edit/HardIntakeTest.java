package quarterlight.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.OwnProcess;
import quarterlight.cli.TestPhotos;
import quarterlight.edit.intake.IntakeRefused;
import quarterlight.edit.intake.IntakeResult;
import quarterlight.photo.originals.Digests;
import quarterlight.task.Progress;
import quarterlight.visit.photo.PhotoFile;

/** Folders that vanish, long paths and a disk that takes no more: each ends in a sentence and a visit that opens. */
@Timeout(120)
class HardIntakeTest {
    private static final int PHOTOS = 30;

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
    }

    private void photos() throws IOException {
        for (int i = 0; i < PHOTOS; i++) {
            TestPhotos.write(card.resolve("IMG_%03d.JPG".formatted(i)), i, "2026:02:28 10:00:%02d".formatted(i));
        }
    }

    private static void deleteAll(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void aFolderThatVanishesWhileItIsTakenInIsToldFileByFile() throws Exception {
        photos();
        Progress pullsTheCard = new Progress() {
            @Override
            public void report(int done, int total, String what) {
                if (done == 5 && Files.exists(card)) {
                    deleteAll(card);
                }
            }

            @Override
            public boolean cancelled() {
                return false;
            }
        };
        IntakeResult result = at.takeIn(pullsTheCard);
        assertThat(result.added()).isBetween(5, PHOTOS - 1);
        assertThat(result.refused()).hasSize(PHOTOS - result.added()).allSatisfy(refusal -> {
            assertThat(refusal.file().getParent()).isEqualTo(card);
            assertThat(refusal.reason()).contains("cannot be read").doesNotContain("Exception");
        });
        assertThat(at.sound()).hasSize(result.added());

        photos();
        assertThat(at.takeIn(Progress.NONE).added())
                .as("the rest, with the card back")
                .isEqualTo(PHOTOS - result.added());
        assertThat(at.sound()).hasSize(PHOTOS);
    }

    @Test
    void aFolderThatVanishesBeforeItIsReadIsRefused() throws Exception {
        photos();
        deleteAll(card);
        assertThatThrownBy(() -> at.takeIn(Progress.NONE))
                .isInstanceOf(IntakeRefused.class)
                .hasMessageContaining(card.toString())
                .hasMessageContaining("no such folder");
        assertThat(at.sound()).isEmpty();
    }

    @Test
    void pathsOfMoreThanThreeHundredCharactersAreTakenIn() throws Exception {
        Path deep = card;
        while (deep.toString().length() < 320) {
            deep = deep.resolve("a folder with a long name, as some programs make them");
        }
        Path longest = deep.resolve("\u8eca".repeat(60) + "-" + "x".repeat(70) + ".JPG");
        assertThat(longest.getFileName().toString().getBytes(StandardCharsets.UTF_8))
                .hasSizeBetween(240, 255);
        TestPhotos.write(deep.resolve("IMG_1.JPG"), 1, "2026:02:28 10:00:00");
        TestPhotos.write(longest, 2, "2026:02:28 10:00:01");
        IntakeResult result = at.takeIn(Progress.NONE);
        assertThat(result.refused()).isEmpty();
        assertThat(result.added()).isEqualTo(2);
        List<PhotoFile> files = at.sound();
        assertThat(files)
                .extracting(PhotoFile::name)
                .contains("IMG_1.JPG", longest.getFileName().toString());
        assertThat(files).extracting(PhotoFile::sha256).contains(Digests.of(longest));
        assertThat(at.takeIn(Progress.NONE).alreadyPresent()).isEqualTo(2);
    }

    /** A limit on the size of files stands for the full disk: what is written beyond it fails in the same way. */
    @Test
    void aDiskThatTakesNoMoreEndsInASentenceAndWhatWentInStays() throws Exception {
        assumeTrue(Files.isExecutable(Path.of("/bin/sh")), "needs a shell with limits");
        for (int i = 0; i < 4; i++) {
            TestPhotos.write(card.resolve("IMG_00" + i + ".JPG"), i, "2026:02:28 10:00:0" + i);
        }
        byte[] small = Files.readAllBytes(card.resolve("IMG_000.JPG"));
        byte[] large = new byte[5 << 20];
        new Random(1).nextBytes(large);
        System.arraycopy(small, 0, large, 0, small.length);
        Files.write(card.resolve("IMG_999.JPG"), large);
        Path err = folder.resolve("err.txt");
        List<String> command = new ArrayList<>(List.of("/bin/sh", "-c", "ulimit -f 4096; exec \"$@\"", "limited"));
        command.addAll(OwnProcess.program(folder, "intake", visit.toString(), card.toString()));
        int status = new ProcessBuilder(command)
                .redirectOutput(folder.resolve("out.txt").toFile())
                .redirectError(err.toFile())
                .start()
                .waitFor();
        List<String> said = Files.readAllLines(err).stream()
                .filter(line -> !line.startsWith("SLF4J"))
                .toList();
        assertThat(said).singleElement().satisfies(line -> assertThat(line)
                .contains("the disk of the visit can no longer be used")
                .doesNotContain("Exception"));
        assertThat(status).isEqualTo(1);
        assertThat(at.sound())
                .extracting(PhotoFile::name)
                .contains("IMG_000.JPG")
                .doesNotContain("IMG_999.JPG");
        Files.delete(card.resolve("IMG_999.JPG"));
        at.takeIn(Progress.NONE);
        assertThat(at.sound()).hasSize(4);
    }
}
