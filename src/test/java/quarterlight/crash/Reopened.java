package quarterlight.crash;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import quarterlight.photo.originals.OriginalsAudit;
import quarterlight.store.StoreAudit;
import quarterlight.store.TakeoverReport;
import quarterlight.store.VisitOpening;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.task.Progress;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.Photo;

/** What is found after a cut, and whether it is whole. */
final class Reopened {
    private static final Set<String> NOT_COMPARED = Set.of("visit.lock", "thumbs.db", "visit.db-wal", "visit.db-shm");

    private Reopened() {}

    /**
     * What a visit holds when it is opened for editing again, which brings back what a killed process left half done; fails unless it is sound.
     *
     * @param home of the user whose program wrote it, with the key by which it knows it
     */
    static VisitRecord visit(Path folder, Path home) {
        Path settings = home.resolve(".quarterlight");
        List<TakeoverReport> told = new ArrayList<>();
        try (VisitStore store = VisitOpening.by(Clock.systemUTC())
                .onThisComputer(settings)
                .telling(told::add)
                .forEditing(folder)) {
            VisitRecord record = store.read();
            assertThat(told).as("left out of what this computer wrote itself").isEmpty();
            assertThat(received(folder))
                    .as("this computer's own visit is not received")
                    .isEmpty();
            assertThat(StoreAudit.of(store)).isEmpty();
            OriginalsAudit audit = OriginalsAudit.of(
                    folder, record.photos().stream().map(Photo::file).toList(), Progress.NONE);
            assertThat(audit.missing()).as("originals that a row names").isEmpty();
            assertThat(audit.changed()).as("originals that a row names").isEmpty();
            assertThat(leftovers(folder)).isEmpty();
            assertThat(leftovers(folder.resolve("pages"))).isEmpty();
            return record;
        } catch (VisitProblem | IOException e) {
            throw new AssertionError("a visit does not open: " + e.getMessage(), e);
        }
    }

    private static List<String> received(Path folder) throws IOException {
        try (Stream<Path> found = Files.list(folder)) {
            return found.map(each -> each.getFileName().toString())
                    .filter(name -> name.startsWith("visit-received"))
                    .toList();
        }
    }

    /** The names that only unfinished things bear. */
    static List<String> leftovers(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> found = Files.list(folder)) {
            return found.map(each -> each.getFileName().toString())
                    .filter(name -> name.startsWith(".unfinished-") || name.startsWith(".making-"))
                    .toList();
        }
    }

    /** The files of a folder, or the one file, by path; empty if there is nothing. What is a cache or a lock, and leftovers, stay out. */
    static Map<String, byte[]> files(Path place) throws IOException {
        Map<String, byte[]> files = new TreeMap<>();
        if (!Files.exists(place)) {
            return files;
        }
        try (Stream<Path> all = Files.walk(place)) {
            for (Path each : all.toList()) {
                String path = place.relativize(each).toString();
                boolean compared =
                        !NOT_COMPARED.contains(each.getFileName().toString()) && !path.contains(".unfinished-");
                if (compared && Files.isRegularFile(each)) {
                    files.put(path, Files.readAllBytes(each));
                } else if (compared) {
                    files.put(path + "/", new byte[0]);
                }
            }
        }
        return files;
    }

    /** Fails unless the two hold the same files with the same bytes. */
    static void assertSame(Map<String, byte[]> found, Map<String, byte[]> wanted) {
        assertThat(found.keySet()).isEqualTo(wanted.keySet());
        found.forEach((name, bytes) -> assertThat(bytes).as(name).isEqualTo(wanted.get(name)));
    }

    /** A folder and all in it, copied to a place where nothing is yet. */
    static Path copied(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path each : all.toList()) {
                Files.copy(each, to.resolve(from.relativize(each).toString()));
            }
        }
        return to;
    }
}
