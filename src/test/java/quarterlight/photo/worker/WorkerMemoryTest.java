package quarterlight.photo.worker;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.photo.MediaType;
import quarterlight.photo.SamplePictures;

/** What all workers together take of the computer's memory, measured from outside, while files that ask for much are in the works at once. */
@Timeout(240)
class WorkerMemoryTest {
    private static final Instant NOW = Instant.parse("2026-11-29T12:00:00Z");
    /** What the launcher leaves of 512 MB beside the program's own heap of 128 MB. */
    private static final long MAX_KB = (512 - 128) << 10;

    private final DecodingWorkers workers = new DecodingWorkers();

    @TempDir
    Path folder;

    @AfterEach
    void stop() {
        workers.close();
    }

    private Path copied(String name, String as) throws IOException {
        Path file = folder.resolve(as);
        try (InputStream in = WorkerMemoryTest.class.getResourceAsStream(name)) {
            Files.copy(in, file);
        }
        return file;
    }

    @Test
    void twoLargeAvifAtOnceStayWithinTheMemoryOfTheWorkers() throws Exception {
        assumeTrue(Files.isReadable(Path.of("/proc/self/status")), "the memory of processes is told on Linux");
        List<Path> bombs = List.of(
                copied("avif-20-megapixels.avif", "1.avif"),
                copied("avif-20-megapixels.avif", "2.avif"),
                copied("avif-12-megapixels.avif", "3.avif"));
        SpareWorkers.end();
        AtomicBoolean done = new AtomicBoolean();
        Set<Long> ofOthers = children().collect(Collectors.toSet());
        CompletableFuture<Long> peak = CompletableFuture.supplyAsync(() -> peakKb(done, ofOthers));
        List<CompletableFuture<String>> ends = bombs.stream()
                .map(bomb -> CompletableFuture.supplyAsync(() -> end(bomb)))
                .toList();
        List<String> told = new ArrayList<>();
        for (CompletableFuture<String> end : ends) {
            told.add(end.get(200, TimeUnit.SECONDS));
        }
        done.set(true);
        String refused = "decoding it takes more than 320 MB of memory and was stopped";
        assertThat(told)
                .as("what cannot be decoded within 512 MB in all is refused, what can is shown")
                .containsExactly(refused, refused, "shown");
        assertThat(peak.get(10, TimeUnit.SECONDS)).isBetween(150L << 10, MAX_KB);
        Path good = Files.write(folder.resolve("good.jpg"), SamplePictures.jpeg(640, 480, 1));
        assertThat(workers.look(good, MediaType.JPEG, NOW).thumbnail()).isPresent();
    }

    private String end(Path bomb) {
        try {
            MediaProbe looked = workers.look(bomb, MediaType.AVIF, NOW);
            return looked.thumbnail().isPresent() ? "shown" : "kept with " + looked.notes();
        } catch (WorkerLost e) {
            return e.reason();
        } catch (IOException e) {
            return e.toString();
        }
    }

    private static Stream<Long> children() {
        return ProcessHandle.current().children().map(ProcessHandle::pid);
    }

    /** A process that was just started has the memory of the one that starts it until it becomes a program of its own. */
    private static boolean isWorker(long process) {
        try {
            return Files.readString(Path.of("/proc", Long.toString(process), "cmdline"))
                    .contains(WorkerMain.class.getName());
        } catch (IOException e) {
            return false;
        }
    }

    /** @param ofOthers children of this process that were there before */
    private static long peakKb(AtomicBoolean done, Set<Long> ofOthers) {
        long peak = 0;
        while (!done.get()) {
            long now = children()
                    .filter(child -> !ofOthers.contains(child) && isWorker(child))
                    .mapToLong(WorkerMemoryTest::residentKb)
                    .sum();
            peak = Math.max(peak, now);
            try {
                TimeUnit.MILLISECONDS.sleep(3);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return peak;
            }
        }
        return peak;
    }

    private static long residentKb(long process) {
        try {
            return Files.readAllLines(Path.of("/proc", Long.toString(process), "status")).stream()
                    .filter(line -> line.startsWith("VmRSS"))
                    .mapToLong(line -> Long.parseLong(line.replaceAll("[^0-9]", "")))
                    .sum();
        } catch (IOException e) {
            return 0;
        }
    }
}
