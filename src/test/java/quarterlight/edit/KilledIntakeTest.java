package quarterlight.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.OwnProcess;
import quarterlight.photo.originals.OriginalsAudit;
import quarterlight.store.StoreAudit;
import quarterlight.store.VisitStore;
import quarterlight.task.Progress;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.Photo;

/** The program itself takes photos in, in a process of its own, and is killed at different moments of it. */
@Timeout(240)
class KilledIntakeTest {
    private static final Path PHOTOS =
            Path.of(System.getProperty("quarterlight.basedir", ".")).resolve("demo-data/chicory-1971/photos");

    private static final int TAKEN = 24;

    @TempDir
    Path folder;

    /** Some of the demo's photos. */
    private Path card() throws IOException {
        Path card = Files.createDirectories(folder.resolve("card"));
        try (Stream<Path> all = Files.walk(PHOTOS)) {
            for (Path photo : all.filter(file -> file.toString().endsWith(".JPG"))
                    .sorted()
                    .limit(TAKEN)
                    .toList()) {
                Files.copy(photo, card.resolve(photo.getFileName()));
            }
        }
        return card;
    }

    @Test
    void aKilledIntakeLeavesAVisitThatOpensAndGoesOnWhereItStopped() throws Exception {
        Path visit = folder.resolve("v");
        assertThat(program("new", visit.toString(), "--car", "Any", "--style", "coupe")
                        .waitFor())
                .isZero();
        String card = card().toString();
        long all = TAKEN;
        int killed = 0;
        int before = 0;
        for (long copied : List.of(1L, 8L, 16L)) {
            Process intake = program("intake", visit.toString(), card);
            waitFor(intake, visit.resolve("originals"), copied);
            killed += intake.isAlive() ? 1 : 0;
            intake.destroyForcibly().waitFor();
            try (VisitStore store = VisitStore.openForEditing(visit, Clock.systemUTC())) {
                VisitRecord record = store.read();
                assertThat(StoreAudit.of(store)).isEmpty();
                assertThat(record.photos().size())
                        .as("no finished batch is lost")
                        .isGreaterThanOrEqualTo(before);
                OriginalsAudit audit = OriginalsAudit.of(
                        visit, record.photos().stream().map(Photo::file).toList(), Progress.NONE);
                assertThat(audit.changed()).isEmpty();
                assertThat(audit.missing()).isEmpty();
                before = record.photos().size();
            }
        }
        assertThat(killed).as("intakes that were killed in the middle").isPositive();
        assertThat(program("intake", visit.toString(), card).waitFor()).isZero();
        try (VisitStore store = VisitStore.openForReading(visit)) {
            List<Photo> photos = store.read().photos();
            Set<String> hashes = new HashSet<>();
            photos.forEach(photo -> hashes.add(photo.file().sha256().hex()));
            assertThat(hashes).hasSize(photos.size());
            assertThat((long) photos.size()).isEqualTo(all);
        }
        assertThat(program("audit", visit.toString()).waitFor()).isZero();
    }

    private static void waitFor(Process process, Path originals, long files) throws IOException, InterruptedException {
        while (process.isAlive() && count(originals) < files) {
            TimeUnit.MILLISECONDS.sleep(5);
        }
    }

    private static long count(Path top) throws IOException {
        if (!Files.exists(top)) {
            return 0;
        }
        try (Stream<Path> files = Files.walk(top)) {
            return files.filter(file ->
                            file.toString().toLowerCase(java.util.Locale.ROOT).endsWith(".jpg"))
                    .count();
        } catch (java.io.UncheckedIOException e) {
            return 0;
        }
    }

    private Process program(String... arguments) throws IOException {
        return new ProcessBuilder(OwnProcess.program(folder, arguments))
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }
}
