package quarterlight.edit.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.photo.Refusal;
import quarterlight.photo.originals.OriginalsAudit;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.task.Progress;
import quarterlight.visit.TestCars;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.Sha256;

class IntakeTest {
    @TempDir
    Path folder;

    private final Map<Sha256, byte[]> shelf = new ConcurrentHashMap<>();
    private Path card;
    private VisitStore store;
    private Intake intake;

    @BeforeEach
    void prepare() throws VisitProblem, IOException {
        card = Files.createDirectories(folder.resolve("card"));
        store = VisitStore.create(folder.resolve("visit"), facts(), Clock.systemUTC());
        intake = new Intake(store, Clock.systemUTC(), shelf::put);
    }

    @AfterEach
    void close() {
        store.close();
    }

    @Test
    void filesOfOneLengthAreTheSameOnlyIfAllTheirBytesAre() throws Exception {
        byte[] start = picture("1.jpg", 1);
        byte[] longFile = Arrays.copyOf(start, start.length + 200_000);
        Files.write(card.resolve("2.jpg"), longFile);
        longFile[longFile.length - 1] = 1;
        Files.write(card.resolve("3.jpg"), longFile);
        Files.write(card.resolve("4.jpg"), longFile);
        longFile[start.length] = 1;
        Files.write(card.resolve("5.jpg"), longFile);
        IntakeResult result = intake.run(List.of(card), Progress.NONE);
        assertThat(result.added()).isEqualTo(4);
        assertThat(result.alreadyPresent()).isEqualTo(1);
        assertThat(files()).extracting(PhotoFile::name).containsExactly("1.jpg", "2.jpg", "3.jpg", "5.jpg");
    }

    @Test
    void takesInWhatIsNewAndSaysWhatIsNot() throws Exception {
        picture("b/2.jpg", 2);
        picture("a/1.jpg", 1);
        Files.copy(card.resolve("a/1.jpg"), card.resolve("b/copy.jpg"));
        Files.writeString(card.resolve("notes.txt"), "hello");
        Files.write(card.resolve("empty.jpg"), new byte[0]);
        IntakeResult result = intake.run(List.of(card), Progress.NONE);
        assertThat(result.added()).isEqualTo(2);
        assertThat(result.alreadyPresent()).isEqualTo(1);
        assertThat(result.notPhotos()).containsExactly(card.resolve("notes.txt"));
        assertThat(result.refused()).containsExactly(new Refusal(card.resolve("empty.jpg"), "the file is empty"));
        assertThat(files()).extracting(PhotoFile::name).containsExactly("1.jpg", "2.jpg");
        assertThat(files()).allSatisfy(file -> {
            assertThat(file.sharpness()).isPresent();
            BufferedImage thumb = ImageIO.read(new ByteArrayInputStream(shelf.get(file.sha256())));
            assertThat(thumb.getWidth()).isEqualTo(320);
        });
        assertThat(OriginalsAudit.of(store.folder().root(), files(), Progress.NONE)
                        .ok())
                .isTrue();
    }

    @Test
    void repeatingAddsNothingTwice() throws Exception {
        picture("1.jpg", 1);
        intake.run(List.of(card), Progress.NONE);
        Files.move(card.resolve("1.jpg"), card.resolve("renamed.jpg"));
        picture("2.jpg", 2);
        IntakeResult again = intake.run(List.of(card, card), Progress.NONE);
        assertThat(again.added()).isEqualTo(1);
        assertThat(again.alreadyPresent()).isEqualTo(1);
        assertThat(originals()).hasSize(2);
    }

    @Test
    void aWholeIntakeIsOneUndoStep() throws Exception {
        for (int i = 0; i < 60; i++) {
            picture(i + ".jpg", i);
        }
        intake.run(List.of(card), Progress.NONE);
        assertThat(files()).hasSize(60);
        assertThat(store.undoLabel()).hasValue("take in 60 photos");
        store.undo();
        assertThat(files()).isEmpty();
        store.redo();
        assertThat(files()).hasSize(60);
    }

    @Test
    void whatWasTakenInBeforeItWasCancelledStays() throws Exception {
        for (int i = 0; i < 20; i++) {
            picture(String.format("%02d.jpg", i), i);
        }
        assertThatThrownBy(() -> intake.run(List.of(card), cancelledAfter(7)))
                .isInstanceOf(CancellationException.class);
        int before = files().size();
        assertThat(before).as("the seventh was in the works").isBetween(6, 7);
        assertThat(files()).extracting(PhotoFile::name).contains("00.jpg", "05.jpg");
        assertThat(originals()).noneMatch(name -> name.endsWith(".part"));
        IntakeResult rest = intake.run(List.of(card), Progress.NONE);
        assertThat(rest.added()).isEqualTo(20 - before);
        assertThat(rest.alreadyPresent()).isEqualTo(before);
    }

    @Test
    void theVisitsOwnFolderIsRefusedAndSparedWhereItLiesInside() throws Exception {
        picture("1.jpg", 1);
        intake.run(List.of(card), Progress.NONE);
        Path own = store.folder().originals();
        assertThatThrownBy(() -> intake.run(List.of(card, own), Progress.NONE))
                .isInstanceOf(IntakeRefused.class)
                .hasMessageContaining("part of the visit itself");
        IntakeResult all = intake.run(List.of(folder), Progress.NONE);
        assertThat(all.added()).isZero();
        assertThat(all.alreadyPresent()).isEqualTo(1);
        assertThat(all.notPhotos()).containsExactly(folder.resolve("visit"));
    }

    @Test
    void aFolderThatIsNotThereIsRefusedAndNothingChanges() throws IOException {
        picture("1.jpg", 1);
        assertThatThrownBy(() -> intake.run(List.of(card, folder.resolve("gone")), Progress.NONE))
                .isInstanceOf(IntakeRefused.class)
                .hasMessageContaining("there is no such folder");
        assertThat(store.undoLabel()).isEmpty();
    }

    @Test
    void whatCannotBeShownIsKeptAndSaysSo() throws Exception {
        byte[] jpeg = picture("1.jpg", 1);
        Files.write(card.resolve("1.jpg"), Arrays.copyOf(jpeg, 30));
        IntakeResult result = intake.run(List.of(card), Progress.NONE);
        assertThat(result.added()).isEqualTo(1);
        assertThat(files().get(0).notes()).anyMatch(note -> note.contains("cannot be shown"));
        assertThat(shelf).isEmpty();
    }

    @Test
    void allSamplesOfManyCamerasAreTakenIn() throws Exception {
        Path samples = Path.of(System.getProperty("quarterlight.basedir", "."))
                .resolve("../shared/real-photos")
                .normalize();
        Assumptions.assumeTrue(Files.isDirectory(samples), "the sample photos are not beside the project");
        IntakeResult result = intake.run(List.of(samples), Progress.NONE);
        assertThat(result.added() + result.alreadyPresent() + result.refused().size())
                .isEqualTo(122);
        assertThat(result.refused()).isEmpty();
        assertThat(files()).allSatisfy(file -> assertThat(
                        shelf.containsKey(file.sha256()) || !file.notes().isEmpty())
                .as(file.name())
                .isTrue());
        IntakeResult again = intake.run(List.of(samples), Progress.NONE);
        assertThat(again.added()).isZero();
        assertThat(again.alreadyPresent()).isEqualTo(122);
        assertThat(OriginalsAudit.of(store.folder().root(), files(), Progress.NONE))
                .isEqualTo(new OriginalsAudit(List.of(), List.of(), List.of(), List.of()));
    }

    private byte[] picture(String name, int seed) throws IOException {
        BufferedImage image = new BufferedImage(400, 300, BufferedImage.TYPE_INT_RGB);
        for (int i = 0; i < 400 * 300; i++) {
            image.setRGB(i % 400, i / 400, (i / 400 + 3 * seed) % 256 << 8 | (i % 400 + 7 * seed) % 256);
        }
        Path file = card.resolve(name);
        Files.createDirectories(file.getParent());
        ImageIO.write(image, "jpeg", file.toFile());
        return Files.readAllBytes(file);
    }

    private List<PhotoFile> files() throws VisitProblem {
        return store.read().photos().stream().map(Photo::file).toList();
    }

    private List<String> originals() throws IOException {
        try (Stream<Path> files = Files.list(store.folder().originals())) {
            return files.map(file -> file.getFileName().toString()).toList();
        }
    }

    private static Progress cancelledAfter(int files) {
        return new Progress() {
            private int seen;

            @Override
            public void report(int done, int total, String what) {
                seen = what.endsWith(".jpg") && !what.startsWith("comparing") ? done + 1 : seen;
            }

            @Override
            public boolean cancelled() {
                return seen >= files;
            }
        };
    }

    private static VisitFacts facts() {
        return TestCars.coupe(ZoneOffset.UTC);
    }
}
