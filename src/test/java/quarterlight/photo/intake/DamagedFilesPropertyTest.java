package quarterlight.photo.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.photo.MediaType;
import quarterlight.photo.RealPhotos;
import quarterlight.photo.SamplePictures;
import quarterlight.photo.worker.DecodingWorkers;
import quarterlight.task.Progress;

/**
 * Files cut anywhere and with bytes flipped are taken in with a note: no crash, no hang. {@code -Dquarterlight.mutations=20000} makes it
 * the long run on all samples.
 */
class DamagedFilesPropertyTest {
    private static final int MUTATIONS = Integer.getInteger("quarterlight.mutations", 150);
    /** Far above what any of them takes; a hang is the failure meant, not slowness. */
    private static final Duration HANG = Duration.ofSeconds(60);

    @TempDir
    Path folder;

    private final DecodingWorkers workers = new DecodingWorkers();

    @AfterEach
    void stop() {
        workers.close();
    }

    @Test
    void aGoodJpegCutAndFlipped() throws IOException {
        byte[] jpeg = SamplePictures.withExif(
                SamplePictures.jpeg(400, 300, 5), "2026:05:04 10:00:00", "2026:05:04 10:00:00", 6);
        for (int seed = 1; seed <= MUTATIONS; seed++) {
            survives(damaged(jpeg, seed), MediaType.JPEG, "seed " + seed);
        }
    }

    @Test
    void filesOfEveryFormatCutAndFlipped() throws IOException {
        Path samples = RealPhotos.folder();
        List<FolderScan.Found> all = new ArrayList<>();
        for (FolderScan.Found found :
                FolderScan.of(List.of(samples), Progress.NONE).media()) {
            if (Files.size(found.file()) < 500_000) {
                all.add(found);
            }
        }
        for (int seed = 1; seed <= MUTATIONS; seed++) {
            FolderScan.Found found = all.get(seed % all.size());
            byte[] damaged = damaged(Files.readAllBytes(found.file()), seed);
            survives(damaged, found.type(), "seed " + seed + " of " + found.file());
        }
    }

    private void survives(byte[] bytes, MediaType type, String what) throws IOException {
        Path file = Files.write(folder.resolve("damaged"), bytes);
        FileIntake taking = new FileIntake(folder, workers, Clock.systemUTC());
        FileIntake.Taken taken = Assertions.assertTimeoutPreemptively(
                HANG,
                () -> {
                    FolderScan.Found found = new FolderScan.Found(file, type);
                    return taking.settle(taking.look(found));
                },
                what);
        assertThat(taken.file().bytes()).as(what).isEqualTo(bytes.length);
        assertThat(taken.thumbnail().isPresent() || !taken.file().notes().isEmpty())
                .as("%s: shown, or a note why not", what)
                .isTrue();
        Files.delete(folder.resolve(taken.file().stored()));
    }

    private static byte[] damaged(byte[] good, int seed) {
        Random random = new Random(seed);
        byte[] bytes = good.clone();
        int kind = random.nextInt(3);
        if (kind != 0) {
            boolean header = random.nextBoolean();
            for (int i = random.nextInt(12); i >= 0; i--) {
                int at = random.nextInt(header ? Math.min(bytes.length, 2000) : bytes.length);
                bytes[at] = (byte) random.nextInt(256);
            }
        }
        return kind == 1 ? bytes : Arrays.copyOf(bytes, 1 + random.nextInt(bytes.length));
    }
}
