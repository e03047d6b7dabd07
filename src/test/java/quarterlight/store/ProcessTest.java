package quarterlight.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static quarterlight.store.SampleVisit.CLOCK;
import static quarterlight.store.SampleVisit.bareFacts;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.store.problem.VisitLocked;
import quarterlight.store.schema.Database;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.reading.GaugeValue;

/** What other processes do to a visit: being killed in the middle of an edit, editing it, reading it. */
@Timeout(180)
class ProcessTest {
    private static final int ROUNDS = 5;
    private static final long SEED = 5;

    @TempDir
    Path folder;

    @Test
    void aKilledProcessLosesNoFinishedEditAndKeepsNoHalfOne() throws Exception {
        Random random = new Random(SEED);
        Path visit = folder.resolve("v");
        VisitStore.create(visit, bareFacts(), CLOCK).close();
        int last = 0;
        for (int round = 0; round < ROUNDS; round++) {
            int acknowledged = killedAfter(visit, last, 3 + random.nextInt(40));
            assertThat(acknowledged)
                    .as("round %d: edits done before the kill", round)
                    .isGreaterThan(last);
            try (VisitStore store = VisitStore.openForEditing(visit, CLOCK)) {
                VisitRecord record = store.read();
                List<Integer> values = values(record);
                last = values.size() / 2;
                assertThat(last).as("round %d: edits kept", round).isBetween(acknowledged, acknowledged + 1);
                assertThat(values).as("round %d: whole edits only", round).isEqualTo(pairsTo(last));
                assertThat(record.photos()).as("round %d: photos", round).hasSize(last / 10);
                assertThat(store.editLog()).as("round %d: edit log", round).hasSize(1 + last);
                assertThat(StoreAudit.of(store)).isEmpty();
            }
        }
    }

    /** Kills the process once it has acknowledged a number of edits; the last number it printed. */
    private static int killedAfter(Path visit, int from, int edits) throws IOException, InterruptedException {
        Process process = EditingProcess.start(visit, from);
        int acknowledged = from;
        try (BufferedReader lines = process.inputReader()) {
            assertThat(lines.readLine()).isEqualTo("open");
            for (int i = 0; i < edits; i++) {
                acknowledged = Integer.parseInt(lines.readLine());
            }
            // by its handle: Process.destroyForcibly would also close the lines that are still to be read
            process.toHandle().destroyForcibly();
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                acknowledged = Integer.parseInt(line);
            }
        } finally {
            process.destroyForcibly().waitFor();
        }
        return acknowledged;
    }

    private static List<Integer> values(VisitRecord record) {
        return record.readings().stream()
                .map(row -> ((GaugeValue.Measured) row.value().value()).typed().intValueExact())
                .toList();
    }

    private static List<Integer> pairsTo(int last) {
        List<Integer> expected = new ArrayList<>();
        for (int i = 1; i <= last; i++) {
            expected.add(i);
            expected.add(i);
        }
        return expected;
    }

    @Test
    void aSecondProcessIsRefusedAtOnceAndAReaderReadsOn() throws Exception {
        Path visit = folder.resolve("v");
        VisitStore.create(visit, bareFacts(), CLOCK).close();
        Process process = EditingProcess.start(visit, 0);
        try (BufferedReader lines = process.inputReader()) {
            assertThat(lines.readLine()).isEqualTo("open");
            int done = Integer.parseInt(lines.readLine());
            assertThatThrownBy(() -> VisitStore.openForEditing(visit, CLOCK)).isInstanceOf(VisitLocked.class);
            try (VisitStore reader = VisitStore.openForReading(visit)) {
                for (int i = 0; i < 10; i++) {
                    List<Integer> values = values(reader.read());
                    assertThat(values).isEqualTo(pairsTo(values.size() / 2));
                    assertThat(values.size() / 2).isGreaterThanOrEqualTo(done);
                    done = Integer.parseInt(lines.readLine());
                }
            }
            copyWhileEdited(visit, folder.resolve("copy.db"));
        } finally {
            process.destroyForcibly().waitFor();
        }
        VisitStore.openForEditing(visit, CLOCK).close();
    }

    private static void copyWhileEdited(Path visit, Path copy) throws Exception {
        try (VisitStore reader = VisitStore.openForReading(visit)) {
            reader.copyDatabase(copy);
        }
        try (var connection = Database.openReadOnly(copy)) {
            List<Integer> values = values(VisitReader.read(connection));
            assertThat(values).isNotEmpty().isEqualTo(pairsTo(values.size() / 2));
        }
    }

    @Test
    void thisProcessKeepsAnotherOut() throws Exception {
        Path visit = folder.resolve("v");
        try (VisitStore store = VisitStore.create(visit, bareFacts(), CLOCK)) {
            Process process = EditingProcess.start(visit, 0);
            try (BufferedReader lines = process.inputReader()) {
                assertThat(lines.readLine()).isEqualTo("refused");
            } finally {
                process.destroyForcibly().waitFor();
            }
            assertThat(store.read().readings()).isEmpty();
        }
    }

    @Test
    void aFolderCopiedAfterAKillIsWhole() throws Exception {
        Path visit = folder.resolve("v");
        VisitStore.create(visit, bareFacts(), CLOCK).close();
        int acknowledged = killedAfter(visit, 0, 12);
        Path copy = Files.createDirectory(folder.resolve("copy"));
        try (Stream<Path> files = Files.list(visit)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, copy.resolve(file.getFileName()));
            }
        }
        try (VisitStore reader = VisitStore.openForReading(copy)) {
            assertThat(values(reader.read())).hasSizeGreaterThanOrEqualTo(2 * acknowledged);
        }
    }
}
