package quarterlight.library;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import quarterlight.edit.library.VisitLibrary;
import quarterlight.edit.library.VisitOrder;
import quarterlight.store.VisitOpening;
import quarterlight.store.VisitStore;
import quarterlight.table.ZoneTable;
import quarterlight.task.Progress;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.row.RecordKind;

/**
 * How fast many visits are found: makes visits from the rows of a demo visit, each with a third of its statements, marks, trials, signs and captions at random,
 * indexes them, and searches. Run by hand.
 */
final class LibraryBench {
    private static final int ROUNDS = 20;
    private static final List<String> QUERIES =
            List.of("replaced quarter", "filler", "hood", "rust", "3970010", "paint edge", "s", "xyzzy");

    private LibraryBench() {}

    /** @param args a demo visit, an empty folder, how many visits */
    public static void main(String[] args) throws Exception {
        Path folder = Path.of(args[1]);
        Path settings = Files.createDirectories(folder.resolve("settings"));
        Path visits = Files.createDirectories(folder.resolve("visits"));
        make(Path.of(args[0]), visits, Integer.parseInt(args[2]));
        System.out.printf("index made in %d ms%n", open(visits, settings));
        System.out.printf("index opened, nothing changed: %d ms%n", open(visits, settings));
        try (VisitLibrary library = library(visits, settings)) {
            for (String query : QUERIES) {
                long[] taken = new long[ROUNDS];
                int rows = 0;
                for (int i = 0; i < ROUNDS; i++) {
                    long start = System.nanoTime();
                    rows = library.find(query, VisitOrder.DATE).size();
                    taken[i] = (System.nanoTime() - start) / 1000;
                }
                Arrays.sort(taken);
                System.out.printf(
                        "find \"%s\": %d rows, median %.1f ms, slowest %.1f ms%n",
                        query, rows, taken[ROUNDS / 2] / 1000.0, taken[ROUNDS - 1] / 1000.0);
            }
            for (String number : numbers(Path.of(args[0]))) {
                long start = System.nanoTime();
                int like = library.like(number).size();
                System.out.printf("like %s: %d rows, %.1f ms%n", number, like, (System.nanoTime() - start) / 1e6);
            }
        }
    }

    /** What the stamps and castings of a visit read, one letter of each unread. */
    private static List<String> numbers(Path demo) throws Exception {
        try (VisitStore store = VisitStore.openForReading(demo)) {
            return store.read().marks().stream()
                    .map(mark -> mark.value().text())
                    .filter(text -> text.length() > 4)
                    .limit(5)
                    .map(text -> text.substring(0, 3) + "?" + text.substring(4))
                    .toList();
        }
    }

    private static VisitLibrary library(Path visits, Path settings) throws Exception {
        return VisitLibrary.of(
                List.of(visits),
                settings,
                ZoneTable.load(),
                VisitOpening.by(Clock.systemUTC()).onThisComputer(settings),
                Progress.NONE);
    }

    private static long open(Path visits, Path settings) throws Exception {
        long start = System.nanoTime();
        library(visits, settings).close();
        return (System.nanoTime() - start) / 1_000_000;
    }

    private static void make(Path demo, Path folder, int count) throws Exception {
        VisitRecord record;
        try (VisitStore store = VisitStore.openForReading(demo)) {
            record = store.read();
        }
        Path first = folder.resolve("visit-0000");
        for (int i = 0; i < count; i++) {
            Path visit = folder.resolve(String.format("visit-%04d", i));
            if (Files.exists(visit)) {
                continue;
            }
            Random random = new Random(i);
            if (i == 0) {
                try (VisitStore store = VisitStore.create(first, record.facts(), Clock.systemUTC())) {
                    store.change("photos", tx -> record.photos().forEach(photo -> tx.addPhoto(photo.file())));
                }
            } else {
                Files.createDirectories(visit);
                Files.copy(first.resolve("visit.db"), visit.resolve("visit.db"));
            }
            try (VisitStore store = VisitStore.openForEditing(visit, Clock.systemUTC())) {
                store.change("rows", tx -> {
                    record.statements().stream()
                            .filter(row -> random.nextInt(3) == 0)
                            .forEach(row -> tx.add(RecordKind.STATEMENTS, row.value()));
                    record.marks().stream()
                            .filter(row -> random.nextInt(3) == 0)
                            .forEach(row -> tx.add(RecordKind.MARKS, row.value()));
                    record.trials().stream()
                            .filter(row -> random.nextInt(3) == 0)
                            .forEach(row -> tx.add(RecordKind.TRIALS, row.value()));
                    record.signs().stream()
                            .filter(row -> random.nextInt(3) == 0)
                            .forEach(row -> tx.add(RecordKind.SIGNS, row.value()));
                    record.pins().forEach(row -> tx.add(RecordKind.PINS, row.value()));
                });
            }
        }
    }
}
