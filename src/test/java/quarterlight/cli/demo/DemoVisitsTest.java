package quarterlight.cli.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.cli.Bench;
import quarterlight.task.Progress;

/** Building the demo visits can be broken off; no half of a visit is left. */
class DemoVisitsTest {
    private static final Path DEMO_DATA =
            Path.of(System.getProperty("quarterlight.basedir", ".")).resolve("demo-data");
    private static final int PHOTOS_SEEN = 5;

    @TempDir
    private Path folder;

    /** Cancelled once a few photos were reported. */
    private static final class SoonCancelled implements Progress {
        private final AtomicInteger reports = new AtomicInteger();

        @Override
        public void report(int done, int total, String what) {
            reports.incrementAndGet();
        }

        @Override
        public boolean cancelled() {
            return reports.get() >= PHOTOS_SEEN;
        }
    }

    @Test
    void brokenOffInTheMiddleNoVisitStandsThere() throws IOException {
        assumeThat(DEMO_DATA).isDirectory();
        DemoVisits visits =
                new DemoVisits(new Bench(folder).withDemoData(DEMO_DATA).around());
        Path demo = folder.resolve("demo");
        SoonCancelled progress = new SoonCancelled();
        assertThatThrownBy(() -> visits.in(demo, progress)).isInstanceOf(CancellationException.class);
        assertThat(progress.reports.get()).isGreaterThanOrEqualTo(PHOTOS_SEEN);
        try (Stream<Path> left = Files.list(demo)) {
            assertThat(left.toList()).isEqualTo(List.of());
        }
    }
}
