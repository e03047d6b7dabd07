package quarterlight.store;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;
import quarterlight.car.ZoneId;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.reading.Reading;
import quarterlight.visit.row.RecordKind;

/** Times of opening, reading and editing one visit of some thousand rows; run by hand, in turns with an earlier version. */
final class OpenEditBench {
    private OpenEditBench() {}

    private static VisitOpening opening(Path folder) {
        return VisitOpening.by(Clock.systemUTC()).onThisComputer(folder.resolve("settings"));
    }

    /** @param args an empty folder, and a number of rounds */
    public static void main(String[] args) throws Exception {
        Path folder = Path.of(args[0]);
        int rounds = Integer.parseInt(args[1]);
        Path visit = folder.resolve("v" + System.nanoTime());
        try (VisitStore store = opening(folder).create(visit, SampleVisit.fullFacts())) {
            store.change("photos", tx -> IntStream.range(0, 500).forEach(i -> tx.addPhoto(SampleVisit.fullPhoto(i))));
            for (int n = 0; n < 40; n++) {
                store.change(
                        "readings",
                        tx -> tx.addAll(
                                RecordKind.READINGS,
                                IntStream.range(0, 50)
                                        .mapToObj(OpenEditBench::reading)
                                        .toList()));
            }
        }
        double[] editing = new double[rounds];
        double[] reading = new double[rounds];
        double[] edit = new double[rounds];
        double[] bulk = new double[rounds / 10];
        for (int i = 0; i < rounds; i++) {
            editing[i] = timed(() -> opening(folder).forEditing(visit).close());
            reading[i] = timed(() -> {
                try (VisitStore store = opening(folder).forReading(visit)) {
                    store.read();
                }
            });
        }
        try (VisitStore store = opening(folder).forEditing(visit)) {
            for (int i = 0; i < rounds; i++) {
                int n = i;
                edit[i] = timed(() -> store.change("one", tx -> tx.add(RecordKind.READINGS, reading(n))));
            }
            for (int i = 0; i < bulk.length; i++) {
                bulk[i] = timed(() -> store.change(
                        "many",
                        tx -> tx.addAll(
                                RecordKind.READINGS,
                                IntStream.range(0, 1000)
                                        .mapToObj(OpenEditBench::reading)
                                        .toList())));
            }
        }
        System.out.printf(
                "open for editing and close %.2f ms, open and read %.2f ms, one edit %.3f ms, edit of 1000 rows %.1f ms, %d bytes%n",
                median(editing), median(reading), median(edit), median(bulk), Files.size(visit.resolve("visit.db")));
    }

    private static Reading reading(int n) {
        return new Reading(
                new ZoneId("hood"),
                new GaugeValue.Measured(BigDecimal.valueOf(60 + n % 40), ThicknessUnit.UM),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private interface Work {
        void run() throws Exception;
    }

    private static double timed(Work work) throws Exception {
        long start = System.nanoTime();
        work.run();
        return (System.nanoTime() - start) / 1e6;
    }

    private static double median(double[] times) {
        double[] sorted = times.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }
}
