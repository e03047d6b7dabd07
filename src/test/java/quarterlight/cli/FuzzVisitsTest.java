package quarterlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Enumeration;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.store.CustomsSlip;
import quarterlight.store.SampleVisit;
import quarterlight.store.StoreAudit;
import quarterlight.store.VisitOpening;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.visit.StoredRows;

/**
 * Databases and archives changed at random, as somebody might send them: every outcome is a sentence, none a fault of the program, none takes long,
 * and no row is lost without a word. A hundredth of the rounds run with the tests; {@code -Dquarterlight.fuzz=100} runs all,
 * {@code -Dquarterlight.fuzz.seed=N} others.
 */
class FuzzVisitsTest {
    private static final int TIMES = Integer.getInteger("quarterlight.fuzz", 1);
    private static final long SEED = Long.getLong("quarterlight.fuzz.seed", 17);
    /** Rounds begin with this one; with {@code -Dquarterlight.fuzz.first=N} a round that failed is the first. */
    private static final int FIRST = Integer.getInteger("quarterlight.fuzz.first", 0);

    private static final int DATABASES = 100 * TIMES;
    private static final int ARCHIVES = 50 * TIMES;
    private static final long MAX_MS = 30_000;

    private static final List<String> BASES = List.of(
            "/quarterlight/store/schema-0005.db", "/quarterlight/store/customs/visit-with-sql-in-a-table-name.db");

    private static final List<String> VERBS =
            List.of("photos", "zones", "history", "rust", "dates", "suggest", "gaps", "audit");

    private static final List<String> VALUES = List.of(
            "NULL",
            "''",
            "' '",
            "'\u0000'",
            "-1",
            "0",
            "1",
            "2",
            "9223372036854775807",
            "-9223372036854775808",
            "1e308",
            "-1e308",
            "9e999",
            "0.1",
            "'NaN'",
            "'1e999999999'",
            "'-5'",
            "'../../x'",
            "'/etc/passwd'",
            "'originals/x'",
            "x'00ff'",
            "zeroblob(100000)",
            "'POLYGON ((0 0, 1 1'",
            "'POLYGON (())'",
            "'POLYGON ((0 0, 0 0, 0 0))'",
            "'POLYGON ((1e308 0, 0 1e308, -1e308 0, 1e308 0))'",
            "'length:0 0 0 0:0'",
            "'length:a b c d:e'",
            "'coin:'",
            "'rectangle:1 1 1 1 1 1 1 1:0 x 0'",
            "'9999-99-99'",
            "'2026-03-29T02:30:00'",
            "'-999999999-01-01'",
            "'+999999999-12-31T23:59:59.999999999'",
            "'PT1H'",
            "'PT-9223372036854775808S'",
            "'Europe/Nowhere'",
            "'+18:01'",
            "'\u001b[31m'",
            "'hood'",
            "'HOOD'",
            "replace(hex(zeroblob(2000)), '0', 'a')",
            "'1 2 3'",
            "'99999999999999999999'",
            "char(55296)",
            "'trunk-floor'",
            "'measured'",
            "'over'");

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
                bytes(visit.resolve("visit.db"), random);
            } else {
                rows(visit.resolve("visit.db"), random);
            }
            long start = System.nanoTime();
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

    /** The round that took longest so far. */
    private static final class Slowest {
        private String name = "";
        private long ms;

        void took(String round, long start) {
            long took = (System.nanoTime() - start) / 1_000_000;
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

    private static void bytes(Path file, Random random) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        int kind = random.nextInt(4);
        if (kind == 0) {
            bytes = java.util.Arrays.copyOf(bytes, random.nextInt(bytes.length));
        } else if (kind == 1) {
            int page = 4096 * random.nextInt(bytes.length / 4096);
            int other = 4096 * random.nextInt(bytes.length / 4096);
            System.arraycopy(bytes.clone(), page, bytes, other, 4096);
        } else {
            int from = kind == 2 ? 0 : 4096;
            int times = 1 + random.nextInt(kind == 2 ? 4 : 300);
            for (int i = 0; i < times; i++) {
                bytes[from + random.nextInt(kind == 2 ? 4096 : bytes.length - 4096)] ^= (byte) (1 << random.nextInt(8));
            }
        }
        Files.write(file, bytes);
    }

    /** Rows and declarations, in the same database or in tables that check nothing. */
    private static void rows(Path file, Random random) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA foreign_keys = OFF");
            statement.execute("PRAGMA ignore_check_constraints = ON");
            int changes = 1 + random.nextInt(6);
            for (int i = 0; i < changes; i++) {
                // asked anew each time: a view in place of a table has no end
                List<String> tables = names(
                        statement,
                        "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite%'"
                                + " AND name NOT LIKE 'p %'");
                change(statement, tables.get(random.nextInt(tables.size())), random);
            }
        }
    }

    private static List<String> names(Statement statement, String query) throws SQLException {
        List<String> found = new ArrayList<>();
        try (ResultSet result = statement.executeQuery(query)) {
            while (result.next()) {
                found.add(result.getString(1));
            }
        }
        return found;
    }

    private static void change(Statement statement, String table, Random random) throws SQLException {
        List<String> columns = names(statement, "SELECT name FROM pragma_table_info('" + table + "')");
        if (columns.isEmpty()) {
            return;
        }
        String column = columns.get(random.nextInt(columns.size()));
        String value = VALUES.get(random.nextInt(VALUES.size()));
        try {
            statement.executeUpdate(
                    switch (random.nextInt(8)) {
                        case 0 ->
                            "CREATE TABLE \"new\" AS SELECT * FROM \"" + table + "\"; DROP TABLE \"" + table
                                    + "\"; ALTER TABLE \"new\" RENAME TO \"" + table + "\"; UPDATE \"" + table
                                    + "\" SET \"" + column
                                    + "\" = " + value;
                        case 1 ->
                            "CREATE TRIGGER \"t" + random.nextInt() + "\" AFTER UPDATE ON \"" + table
                                    + "\" BEGIN DELETE FROM \"" + table + "\"; END";
                        case 2 ->
                            "DROP TABLE \"" + table + "\"; CREATE VIEW \"" + table
                                    + "\" AS WITH RECURSIVE n(id) AS (SELECT 1 UNION ALL SELECT id + 1 FROM n) SELECT id FROM n";
                        case 3 -> "ALTER TABLE \"" + table + "\" DROP COLUMN \"" + column + "\"";
                        case 4 -> "DELETE FROM \"" + table + "\" WHERE id % 2 = 0";
                        default ->
                            "UPDATE \"" + table + "\" SET \"" + column + "\" = " + value + " WHERE id % "
                                    + (1 + random.nextInt(3)) + " = 0";
                    });
        } catch (SQLException e) {
            // what SQLite itself refuses cannot be sent
            assertThat(e.getMessage()).isNotNull();
        }
    }

    /** Whether anything was noticed; a visit that opens lost no row without a word. */
    private boolean opened(Path visit, String name) throws Exception {
        List<CustomsSlip> slips = new ArrayList<>();
        VisitOpening opening = VisitOpening.by(SampleVisit.CLOCK)
                .onThisComputer(folder.resolve("settings"))
                .telling(slips::add);
        try (VisitStore store = opening.forReading(visit)) {
            store.read();
            List<StoredRows> tables = store.tables();
            List<String> audit = StoreAudit.of(store);
            assertThat(audit).as(name).allSatisfy(line -> assertThat(line).endsWith("."));
            if (slips.isEmpty()) {
                assertNoRowIsGone(visit, tables, name);
            }
            return !audit.isEmpty() || !slips.isEmpty();
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
            for (String table : names(statement, "SELECT name FROM sqlite_schema WHERE type = 'table'")) {
                if (!table.equals("edit_log")) {
                    there += Long.parseLong(
                            names(statement, "SELECT count(*) FROM \"" + table.replace("\"", "\"\"") + "\" NOT INDEXED")
                                    .get(0));
                }
            }
            if (names(statement, "SELECT name FROM pragma_table_info('visit')").contains("claimed")) {
                claims = Long.parseLong(names(statement, "SELECT count(*) FROM visit WHERE trim(claimed) <> ''")
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
                scratch(bad, random);
            } else {
                packedAnew(good, bad, random);
            }
            long start = System.nanoTime();
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

    private static void scratch(Path file, Random random) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        int times = 1 + random.nextInt(20);
        for (int i = 0; i < times; i++) {
            bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
        }
        Files.write(
                file, random.nextInt(4) == 0 ? java.util.Arrays.copyOf(bytes, random.nextInt(bytes.length)) : bytes);
    }

    /** Some of its files changed, left out, or under other names, with manifests that say so. */
    private static void packedAnew(Path good, Path bad, Random random) throws IOException {
        try (ZipFile zip = new ZipFile(good.toFile());
                OutputStream out = Files.newOutputStream(bad);
                ZipOutputStream target = new ZipOutputStream(out)) {
            StringBuilder manifest = new StringBuilder();
            String base = "";
            Enumeration<? extends ZipEntry> all = zip.entries();
            for (ZipEntry entry : Collections.list(all)) {
                base = entry.getName().substring(0, entry.getName().indexOf('/') + 1);
                String path = entry.getName().substring(base.length());
                if (path.startsWith("manifest") || path.startsWith("tagmanifest")) {
                    continue;
                }
                byte[] bytes = zip.getInputStream(entry).readAllBytes();
                int kind = random.nextInt(12);
                if (kind == 0) {
                    continue;
                }
                if (kind <= 3 && bytes.length > 0) {
                    bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
                }
                String named = kind == 4 ? path + "x" : path;
                target.putNextEntry(new ZipEntry(base + named));
                target.write(bytes);
                target.closeEntry();
                if (named.startsWith("data/")) {
                    manifest.append(hash(bytes)).append("  ").append(named).append('\n');
                }
            }
            target.putNextEntry(new ZipEntry(base + "manifest-sha256.txt"));
            target.write(manifest.toString().getBytes(java.nio.charset.StandardCharsets.UTF_8));
            target.closeEntry();
        }
    }

    private static String hash(byte[] bytes) {
        try {
            return java.util.HexFormat.of()
                    .formatHex(
                            java.security.MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (java.security.NoSuchAlgorithmException e) {
            throw new AssertionError(e);
        }
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
