package quarterlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.io.InputStream;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.store.SampleVisit;
import quarterlight.store.StoreAudit;
import quarterlight.store.TakeoverReport;
import quarterlight.store.VisitOpening;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.visit.StoredRows;

/**
 * Databases and archives changed at random, as somebody might send them: every outcome is a sentence, none a fault of the program, none takes long,
 * and no row is lost without a word. A two-hundredth of the rounds runs with the tests; {@code -Dquarterlight.fuzz=200} runs all,
 * {@code -Dquarterlight.fuzz.seed=N} others.
 */
class FuzzVisitsTest {
    private static final int TIMES = Integer.getInteger("quarterlight.fuzz", 1);
    private static final long SEED = Long.getLong("quarterlight.fuzz.seed", 17);
    /** Rounds begin with this one; with {@code -Dquarterlight.fuzz.first=N} a round that failed is the first. */
    private static final int FIRST = Integer.getInteger("quarterlight.fuzz.first", 0);

    private static final int DATABASES = 50 * TIMES;
    private static final int ARCHIVES = 25 * TIMES;
    private static final long MAX_MS = 30_000;

    private static final List<String> BASES = List.of(
            "/quarterlight/store/schema-0005.db", "/quarterlight/store/takeover/visit-with-sql-in-a-table-name.db");

    private static final List<String> VERBS =
            List.of("photos", "zones", "history", "rust", "dates", "suggest", "gaps", "audit");

    @TempDir
    Path folder;

    @Test
    @Timeout(value = 3, unit = TimeUnit.HOURS)
    void aDatabaseChangedAtRandomEndsInASentence(TestReporter reporter) throws Exception {
        int told = 0;
        Slowest slowest = new Slowest();
        for (int round = FIRST; round < DATABASES; round++) {
            Random random = new Random(SEED * 1_000_003 + round);
            String name = "seed " + SEED + ", database " + round;
            Path visit = Files.createDirectories(folder.resolve("d" + round));
            byte[] base = base(BASES.get(random.nextInt(BASES.size())));
            Files.write(visit.resolve("visit.db"), base);
            if (random.nextInt(3) == 0) {
                MutatedDatabase.bytes(visit.resolve("visit.db"), random);
            } else {
                MutatedDatabase.rows(visit.resolve("visit.db"), random);
            }
            long start = busyNanos();
            told += opened(visit, name) ? 1 : 0;
            if (round % 4 == 0) {
                verb(visit, VERBS.get(random.nextInt(VERBS.size())), name);
            }
            slowest.took(name, start);
            delete(visit);
        }
        reporter.publishEntry("slowest", slowest.toString());
        assertThat(told).as("how many were noticed").isGreaterThan((DATABASES - FIRST) / 2);
    }

    /** Processor time of this process, so that a busy computer does not count. */
    private static long busyNanos() {
        return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime();
    }

    /** The round that took longest so far. */
    private static final class Slowest {
        private String name = "";
        private long ms;

        void took(String round, long start) {
            long took = (busyNanos() - start) / 1_000_000;
            assertThat(took).as(round + " took").isLessThan(MAX_MS);
            if (took > ms) {
                ms = took;
                name = round;
            }
        }

        @Override
        public String toString() {
            return name + ": " + ms + " ms";
        }
    }

    private static byte[] base(String resource) throws IOException {
        try (InputStream in = FuzzVisitsTest.class.getResourceAsStream(resource)) {
            return in.readAllBytes();
        }
    }

    /** Whether anything was noticed; a visit that opens lost no row without a word. */
    private boolean opened(Path visit, String name) throws Exception {
        List<TakeoverReport> reports = new ArrayList<>();
        VisitOpening opening = VisitOpening.by(SampleVisit.CLOCK)
                .onThisComputer(folder.resolve("settings"))
                .telling(reports::add);
        try (VisitStore store = opening.forReading(visit)) {
            store.read();
            List<StoredRows> tables = store.tables();
            List<String> audit = StoreAudit.of(store);
            assertThat(audit).as(name).allSatisfy(line -> assertThat(line).endsWith("."));
            if (reports.isEmpty()) {
                assertNoRowIsGone(visit, tables, name);
            }
            return !audit.isEmpty() || !reports.isEmpty();
        } catch (VisitProblem e) {
            assertThat(e.getMessage())
                    .as(name)
                    .contains(visit.toString())
                    .endsWith(".")
                    .doesNotContain("Exception");
            return true;
        }
    }

    /** What earlier schemas said of the car as claimed has become a claim with a row of its own. */
    private static void assertNoRowIsGone(Path visit, List<StoredRows> tables, String name) throws SQLException {
        long there = 0;
        long claims = 0;
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + visit.resolve("visit.db"));
                Statement statement = connection.createStatement()) {
            for (String table :
                    MutatedDatabase.names(statement, "SELECT name FROM sqlite_schema WHERE type = 'table'")) {
                if (!table.equals("edit_log")) {
                    there += Long.parseLong(MutatedDatabase.names(
                                    statement,
                                    "SELECT count(*) FROM \"" + table.replace("\"", "\"\"") + "\" NOT INDEXED")
                            .get(0));
                }
            }
            if (MutatedDatabase.names(statement, "SELECT name FROM pragma_table_info('visit')")
                    .contains("claimed")) {
                claims = Long.parseLong(
                        MutatedDatabase.names(statement, "SELECT count(*) FROM visit WHERE trim(claimed) <> ''")
                                .get(0));
            }
        }
        long kept = tables.stream()
                .filter(table -> !table.table().equals("edit-log"))
                .mapToLong(table -> table.rows().size())
                .sum();
        assertThat(kept).as(name + ", rows").isEqualTo(there + claims);
    }

    private void verb(Path visit, String verb, String name) throws IOException {
        Path settings = Files.createDirectories(folder.resolve("bench"));
        Bench.Outcome outcome = new Bench(settings).run(verb, visit.toString());
        assertThat(outcome.err()).as(name + ", " + verb).doesNotContain("fault of the program", "Exception", "\tat ");
        assertThat(outcome.status()).as(name + ", " + verb).isBetween(0, 3);
    }

    @Test
    @Timeout(value = 3, unit = TimeUnit.HOURS)
    void anArchiveChangedAtRandomEndsInASentence(TestReporter reporter) throws Exception {
        Path settings = Files.createDirectories(folder.resolve("bench"));
        Bench bench = new Bench(settings);
        Slowest slowest = new Slowest();
        String visit = bench.visit();
        Path good = folder.resolve("good.zip");
        assertThat(bench.run("archive", visit, good.toString()).status()).isLessThan(2);
        for (int round = FIRST; round < ARCHIVES; round++) {
            Random random = new Random(SEED * 7_000_003 + round);
            String name = "seed " + SEED + ", archive " + round;
            Path bad = folder.resolve("bad" + round + ".zip");
            if (random.nextInt(2) == 0) {
                Files.copy(good, bad);
                MutatedArchive.scratch(bad, random);
            } else {
                MutatedArchive.packedAnew(good, bad, random);
            }
            long start = busyNanos();
            Path back = folder.resolve("back" + round);
            for (String[] call :
                    new String[][] {{"audit", bad.toString()}, {"restore", bad.toString(), back.toString()}}) {
                Bench.Outcome outcome = bench.run(call);
                assertThat(outcome.err())
                        .as(name + ", " + call[0])
                        .doesNotContain("fault of the program", "Exception", "\tat ");
                assertThat(outcome.status()).as(name + ", " + call[0]).isBetween(0, 2);
            }
            slowest.took(name, start);
            delete(back);
            Files.delete(bad);
        }
        reporter.publishEntry("slowest", slowest.toString());
    }

    private static void delete(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        try (var all = Files.walk(folder)) {
            for (Path each : all.sorted(java.util.Comparator.reverseOrder()).toList()) {
                Files.delete(each);
            }
        }
    }
}
