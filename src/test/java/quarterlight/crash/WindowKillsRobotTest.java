package quarterlight.crash;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.OwnProcess;
import quarterlight.cli.TestPhotos;
import quarterlight.file.Leftovers;
import quarterlight.ui.WindowAtWork;
import quarterlight.visit.VisitRecord;

/**
 * Kills the real window at random moments while it takes photos in, sets some aside and makes pages; the visit must be whole then. More with
 * {@code -Dquarterlight.kills=50}, others with {@code -Dquarterlight.seed=N}. Needs a display and a window manager.
 */
@Timeout(7200)
class WindowKillsRobotTest {
    private static final int KILLS = Integer.getInteger("quarterlight.kills", 3);
    private static final long SEED = Long.getLong("quarterlight.seed", 17);
    private static final int PHOTOS = 6;
    private static final int MORE_PHOTOS = 12;
    /** Kills fall within the time until the pages are asked for, and so much of it again. */
    private static final double SPAN = 1.5;

    private static final int PATIENCE_SECONDS = 240;

    @TempDir
    Path folder;

    private Path home;
    private Path template;
    /** From the drop to the pages, told by the first window, which is killed then. */
    private long workMs;

    @BeforeEach
    void visitWithPhotos() throws Exception {
        folder = folder.toRealPath();
        home = Files.createDirectories(folder.resolve("home"));
        template = folder.resolve("template");
        for (int i = 0; i < PHOTOS; i++) {
            TestPhotos.write(folder.resolve("card/IMG_" + i + ".JPG"), i + 1, "2026:02:28 10:00:0" + i);
        }
        for (int i = 0; i < MORE_PHOTOS; i++) {
            TestPhotos.write(folder.resolve("second/DSC_" + i + ".JPG"), i + 50, "2026:02:28 11:00:%02d".formatted(i));
        }
        toTheEnd("new", template.toString(), "--car", "Any", "--style", "coupe", "--year", "1970");
        toTheEnd("intake", template.toString(), folder.resolve("card").toString());
    }

    @Test
    void aKilledWindowLeavesAWholeVisit(TestReporter reporter) throws Exception {
        List<Integer> photos = new ArrayList<>();
        List<Integer> aside = new ArrayList<>();
        for (int n = 0; n < KILLS; n++) {
            Path visit = copied("visit-" + n);
            Random random = new Random(SEED * 1_000_003 + n);
            String which = "seed " + SEED + ", kill " + n;
            try {
                killed(visit, random);
                VisitRecord found = Reopened.visit(visit, home);
                assertThat(found.photos()).as(which).hasSizeBetween(PHOTOS, PHOTOS + MORE_PHOTOS);
                photos.add(found.photos().size());
                aside.add((int) found.photos().stream()
                        .filter(photo -> photo.setAside().isPresent())
                        .count());
                RandomKillsTest.wholePages(Files.createDirectories(visit.resolve("pages")));
            } catch (AssertionError | IOException e) {
                throw new AssertionError(which + ": " + e.getMessage(), e);
            }
            Leftovers.delete(visit);
        }
        // how far each window had come, since a busy computer decides that
        reporter.publishEntry("photos", photos.toString());
        reporter.publishEntry("set aside", aside.toString());
    }

    private void killed(Path visit, Random random) throws Exception {
        List<String> command = OwnProcess.of(
                WindowAtWork.class,
                home,
                visit.toString(),
                folder.resolve("second").toString());
        command.replaceAll(part -> part.equals("-Djava.awt.headless=true") ? "-Djava.awt.headless=false" : part);
        Path out = folder.resolve("out.txt");
        Process process = new ProcessBuilder(command)
                .redirectOutput(out.toFile())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        try {
            until(process, out, "dropped");
            long begun = System.nanoTime();
            if (workMs == 0) {
                until(process, out, "pages");
                workMs = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - begun);
            } else {
                TimeUnit.MILLISECONDS.sleep((long) (workMs * SPAN * random.nextDouble()));
            }
            assertThat(process.isAlive()).as("the window before it is killed").isTrue();
        } finally {
            process.destroyForcibly().waitFor();
        }
    }

    private static void until(Process process, Path out, String said) throws Exception {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
        while (!Files.readString(out).contains(said)) {
            assertThat(process.isAlive() && System.nanoTime() < end)
                    .as("the window until it says " + said)
                    .isTrue();
            TimeUnit.MILLISECONDS.sleep(20);
        }
    }

    private Path copied(String name) throws IOException {
        Path copy = folder.resolve(name);
        try (Stream<Path> all = Files.walk(template)) {
            for (Path each : all.toList()) {
                Files.copy(each, copy.resolve(template.relativize(each).toString()));
            }
        }
        return copy;
    }

    private void toTheEnd(String... call) throws Exception {
        assertThat(new ProcessBuilder(OwnProcess.program(home, call))
                        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                        .redirectError(ProcessBuilder.Redirect.DISCARD)
                        .start()
                        .waitFor())
                .isZero();
    }
}
