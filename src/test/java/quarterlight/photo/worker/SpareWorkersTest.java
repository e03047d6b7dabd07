package quarterlight.photo.worker;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.photo.MediaType;
import quarterlight.photo.SamplePictures;

/** Which processes are there after a pool was closed, and who has them next. */
@Timeout(240)
class SpareWorkersTest {
    private static final Instant NOW = Instant.parse("2026-11-29T12:00:00Z");

    @TempDir
    Path folder;

    @BeforeEach
    @AfterEach
    void none() {
        SpareWorkers.end();
    }

    private static Set<Long> workers() {
        return ProcessHandle.current()
                .children()
                .filter(ProcessHandle::isAlive)
                .map(ProcessHandle::pid)
                .collect(Collectors.toSet());
    }

    private void look(DecodingWorkers workers) throws Exception {
        Path good = Files.write(folder.resolve("good.jpg"), SamplePictures.jpeg(64, 48, 1));
        assertThat(workers.look(good, MediaType.JPEG, NOW).thumbnail()).isPresent();
    }

    @Test
    void theNextPoolTakesOverWhatIsIdle() throws Exception {
        Set<Long> others = workers();
        try (DecodingWorkers first = new DecodingWorkers()) {
            first.start();
            look(first);
        }
        Set<Long> idle = workers();
        idle.removeAll(others);
        assertThat(idle).hasSize(WorkerPool.WORKERS);
        try (DecodingWorkers next = new DecodingWorkers()) {
            next.start();
            look(next);
            look(next);
            Set<Long> now = workers();
            now.removeAll(others);
            assertThat(now).isEqualTo(idle);
        }
    }

    @Test
    void otherLimitsHaveWorkersOfTheirOwnAndEndTheIdle() throws Exception {
        try (DecodingWorkers first = new DecodingWorkers()) {
            look(first);
        }
        Set<Long> idle = workers();
        WorkerLimits shorter =
                new WorkerLimits(WorkerLimits.USUAL.heapMb(), WorkerLimits.USUAL.memoryMb(), Duration.ofSeconds(9));
        try (DecodingWorkers other = new DecodingWorkers(shorter, WorkerLimits.ALONE)) {
            look(other);
            assertThat(workers()).hasSize(idle.size()).isNotEqualTo(idle);
        }
    }

    @Test
    void noMoreWaitThanOnePoolHas() throws Exception {
        Set<Long> others = workers();
        DecodingWorkers one = new DecodingWorkers();
        DecodingWorkers two = new DecodingWorkers();
        one.start();
        two.start();
        look(one);
        look(two);
        one.close();
        two.close();
        assertThat(workers()).hasSize(others.size() + WorkerPool.WORKERS);
    }

    @Test
    void oneThatIsAtWorkEndsWithItsPool() throws Exception {
        Set<Long> others = workers();
        Path slow = folder.resolve("slow.jpg");
        try (InputStream in = SpareWorkersTest.class.getResourceAsStream("jpg-scans-small.jpg")) {
            Files.copy(in, slow);
        }
        DecodingWorkers pool = new DecodingWorkers();
        look(pool);
        CompletableFuture<Throwable> told = CompletableFuture.supplyAsync(() -> {
            try {
                pool.look(slow, MediaType.JPEG, NOW);
                return new AssertionError("it was decoded");
            } catch (WorkerLost | IOException e) {
                return e;
            }
        });
        TimeUnit.MILLISECONDS.sleep(300);
        pool.close();
        assertThat(told.get(30, TimeUnit.SECONDS)).isInstanceOf(WorkerLost.class);
        assertThat(workers()).isEqualTo(others);
    }
}
