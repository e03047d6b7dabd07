package quarterlight.photo.worker;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.photo.MediaType;
import quarterlight.photo.PictureUnreadable;
import quarterlight.photo.RealPhotos;
import quarterlight.photo.SamplePictures;
import quarterlight.photo.decode.Pictures;
import quarterlight.photo.exif.Preview;
import quarterlight.photo.header.FileFacts;
import quarterlight.photo.header.MetadataReader;

/** Files that bring a decoder down, or would, and what the next file sees of that: nothing. */
@Timeout(240)
class DecodingWorkersTest {
    private static final Instant NOW = Instant.parse("2026-11-29T12:00:00Z");

    @TempDir
    Path folder;

    /** Of processor time: a worker that starts and looks at a good file takes about a quarter, the slow file more than twice as long. */
    private static final Duration HASTY = Duration.ofSeconds(2);

    private DecodingWorkers workers = new DecodingWorkers();

    @AfterEach
    void stop() {
        workers.close();
    }

    private void with(WorkerLimits usual, WorkerLimits alone) {
        workers.close();
        workers = new DecodingWorkers(usual, alone);
    }

    private Path hostile(String name) throws IOException {
        Path file = folder.resolve(name);
        try (InputStream in = DecodingWorkersTest.class.getResourceAsStream(name)) {
            Files.copy(in, file);
        }
        return file;
    }

    private Path good(int seed) throws IOException {
        return Files.write(folder.resolve("good " + seed + ".jpg"), SamplePictures.jpeg(640, 480, seed));
    }

    private void isLookedAt(Path file) throws Exception {
        MediaProbe looked = workers.look(file, MediaType.JPEG, NOW);
        assertThat(looked.thumbnail()).isPresent();
        assertThat(looked.facts().header().width()).hasValue(640);
        assertThat(looked.sharpness()).isPresent();
    }

    @Test
    void aPictureComesAsItIsDecodedHere() throws Exception {
        Path file = good(1);
        for (int longSide : List.of(320, 640)) {
            BufferedImage there = workers.upright(file, MediaType.JPEG, 6, longSide);
            BufferedImage here = Pictures.usual().upright(file, MediaType.JPEG, 6, longSide);
            assertThat(there.getWidth()).isEqualTo(here.getWidth()).isEqualTo(longSide * 3 / 4);
            assertThat(pixels(there)).isEqualTo(pixels(here));
        }
    }

    private static int[] pixels(BufferedImage image) {
        return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    }

    @Test
    void whatFilesOfManyCamerasSayComesWhole() throws Exception {
        MetadataReader reader = new MetadataReader(Clock.fixed(NOW, ZoneOffset.UTC));
        int seen = 0;
        for (CSVRecord row : RealPhotos.expected()) {
            Path file = RealPhotos.folder().resolve(row.get("path"));
            MediaType type = MediaType.of(head(file)).orElse(MediaType.JPEG);
            FileFacts there = workers.facts(file, type, NOW);
            FileFacts here = reader.read(file, type);
            assertThat(there).usingRecursiveComparison().as(file.toString()).isEqualTo(here);
            seen++;
        }
        assertThat(seen).isGreaterThan(90);
    }

    private static byte[] head(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(MediaType.HEAD_BYTES);
        }
    }

    @Test
    void aFileThatTakesTooLongIsStoppedAndTheNextIsLookedAt() throws Exception {
        with(new WorkerLimits(72, 160, HASTY), WorkerLimits.ALONE);
        isLookedAt(good(1));
        Path slow = hostile("jpg-scans-small.jpg");
        assertThatThrownBy(() -> workers.look(slow, MediaType.JPEG, NOW))
                .isInstanceOfSatisfying(WorkerLost.class, lost -> {
                    assertThat(lost.file()).isEqualTo(slow);
                    assertThat(lost.reason()).contains("took more than");
                });
        isLookedAt(good(2));
    }

    @Test
    void aFileThatNeedsMoreMemoryIsTriedAloneAndThenRefused() throws Exception {
        Path large = Files.write(folder.resolve("large.jpg"), SamplePictures.jpeg(4000, 3000, 1));
        with(new WorkerLimits(24, 160, Duration.ofSeconds(20)), new WorkerLimits(200, 400, Duration.ofSeconds(20)));
        assertThat(workers.upright(large, MediaType.JPEG, 1, 4000).getWidth())
                .as("by the worker that has all the memory")
                .isEqualTo(4000);
        with(new WorkerLimits(24, 160, Duration.ofSeconds(20)), new WorkerLimits(24, 160, Duration.ofSeconds(20)));
        assertThatThrownBy(() -> workers.upright(large, MediaType.JPEG, 1, 4000))
                .isInstanceOfSatisfying(
                        PictureUnreadable.class, e -> assertThat(e.reason()).contains("more than 160 MB of memory"));
        isLookedAt(good(1));
    }

    /** The limit on memory is below what the worker itself takes, so native memory and all is what is measured. */
    @Test
    void theWholeProcessIsMeasuredNotOnlyItsHeap() throws Exception {
        WorkerLimits tight = new WorkerLimits(72, 20, Duration.ofSeconds(20));
        with(tight, tight);
        Path file = good(1);
        assertThatThrownBy(() -> workers.look(file, MediaType.JPEG, NOW)).isInstanceOf(WorkerLost.class);
    }

    private CompletableFuture<Throwable> lookedAtMeanwhile(Path slow) {
        return CompletableFuture.supplyAsync(() -> {
            try {
                workers.look(slow, MediaType.JPEG, NOW);
                return new AssertionError("it was decoded");
            } catch (WorkerLost | IOException e) {
                return e;
            }
        });
    }

    @Test
    void aWorkerThatDiesCostsNoMoreThanTheFileItWasAt() throws Exception {
        isLookedAt(good(1));
        Path slow = hostile("jpg-scans-small.jpg");
        CompletableFuture<Throwable> told = lookedAtMeanwhile(slow);
        TimeUnit.MILLISECONDS.sleep(400);
        ProcessHandle.current().children().forEach(ProcessHandle::destroyForcibly);
        assertThat(told.get(60, TimeUnit.SECONDS))
                .isInstanceOfSatisfying(
                        WorkerLost.class, lost -> assertThat(lost.reason()).contains("the process for it ended"));
        isLookedAt(good(2));
    }

    @Test
    void workIsBrokenOffAtOnce() throws Exception {
        isLookedAt(good(1));
        Path slow = hostile("jpg-scans-small.jpg");
        CompletableFuture<Throwable> told = lookedAtMeanwhile(slow);
        TimeUnit.MILLISECONDS.sleep(300);
        workers.breakOff();
        assertThat(told.get(5, TimeUnit.SECONDS))
                .isInstanceOfSatisfying(
                        WorkerLost.class, lost -> assertThat(lost.isClosed()).isTrue());
        isLookedAt(good(2));
        workers.close();
        assertThatThrownBy(() -> workers.look(slow, MediaType.JPEG, NOW)).isInstanceOf(WorkerLost.class);
        SpareWorkers.end();
        assertThat(ProcessHandle.current().children().filter(ProcessHandle::isAlive))
                .isEmpty();
    }

    @Test
    void previewsAreUnderTheSameBoundsAsPictures() throws Exception {
        for (String name : List.of("jpg-preview-26000.jpg", "jpg-preview-65500.jpg")) {
            Path file = hostile(name);
            MediaProbe looked = workers.look(file, MediaType.JPEG, NOW);
            assertThat(looked.thumbnail()).as(name).isEmpty();
            Preview bomb = looked.facts().preview().orElseThrow();
            assertThatThrownBy(() -> workers.upright(bomb, 1))
                    .isInstanceOfSatisfying(
                            PictureUnreadable.class, e -> assertThat(e.reason()).contains("claims"));
        }
        Preview good = new Preview(SamplePictures.jpeg(160, 120, 1));
        assertThat(workers.upright(good, 6).getWidth()).isEqualTo(120);
    }

    @Test
    void aChainOfDirectoriesIsANote() throws Exception {
        MediaProbe looked = workers.look(hostile("tif-chained-directories.tif"), MediaType.TIFF, NOW);
        assertThat(looked.facts().notes()).anyMatch(note -> note.contains("The TIFF data is damaged"));
    }

    @Test
    void aFileThatIsGoneCannotBeRead() {
        Path gone = folder.resolve("gone.jpg");
        assertThatThrownBy(() -> workers.look(gone, MediaType.JPEG, NOW))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("gone.jpg");
    }
}
