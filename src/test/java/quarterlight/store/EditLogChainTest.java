package quarterlight.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static quarterlight.store.SampleVisit.CLOCK;
import static quarterlight.store.SampleVisit.HOOD;
import static quarterlight.store.SampleVisit.barePhoto;
import static quarterlight.store.SampleVisit.fullFacts;
import static quarterlight.store.SampleVisit.reading;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quarterlight.store.folder.DatabaseFiles;
import quarterlight.store.folder.VisitFolder;
import quarterlight.store.problem.VisitUnreadable;
import quarterlight.store.schema.Database;
import quarterlight.store.schema.Schema;
import quarterlight.visit.row.RecordKind;

/** The edit log as a hash chain: what it vouches for, and what becomes of those who change something beside it. */
class EditLogChainTest {
    @TempDir
    Path folder;

    private final List<TakeoverReport> told = new ArrayList<>();

    private VisitOpening here() {
        return VisitOpening.by(CLOCK).onThisComputer(folder.resolve("settings")).telling(told::add);
    }

    /** Five entries: made, three edits, one of them undone. */
    private Path made() throws Exception {
        Path visit = folder.resolve("v");
        try (VisitStore store = here().create(visit, fullFacts())) {
            store.change("photos", tx -> {
                tx.addPhoto(barePhoto(1));
                tx.addPhoto(barePhoto(2));
            });
            store.change("hood", tx -> tx.add(RecordKind.READINGS, reading(HOOD, "65")));
            store.change("hood again", tx -> tx.add(RecordKind.READINGS, reading(HOOD, "70")));
            store.undo();
        }
        return visit;
    }

    private static void tamper(Path visit, String... statements) throws Exception {
        try (Connection connection = Database.open(visit.resolve("visit.db"))) {
            for (String statement : statements) {
                Database.run(connection, statement);
            }
        }
    }

    private String audit(Path visit) throws Exception {
        try (VisitStore store = here().forReading(visit)) {
            return String.join("\n", StoreAudit.of(store));
        }
    }

    @Test
    void aVisitThatWasOnlyEditedAgreesWithItsLog() throws Exception {
        Path visit = made();
        assertThat(audit(visit)).isEmpty();
        try (VisitStore store = here().forReading(visit)) {
            assertThat(store.editLog()).hasSize(5);
            assertThat(store.logHead().orElseThrow()).matches("5 [0-9a-f]{64}");
            assertThat(Files.readString(visit.resolve("visit.head")))
                    .contains(" 000000000005 " + store.logHead().orElseThrow().substring(2) + " ");
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "UPDATE reading SET typed = '25', thickness_um = 25 WHERE id = 1|Row 1 of table reading is not as the"
                        + " edit log has it.",
                "DELETE FROM reading|Row 1 of table reading is gone, and the edit log does not tell of it.",
                "INSERT INTO reading (zone, outcome) VALUES ('hood', 'none')|Row 2 of table reading is there, and the"
                        + " edit log does not tell of it.",
                "UPDATE photo SET sha256 = 'ABCDEFABCDEFABCDEFABCDEFABCDEFABCDEFABCDEFABCDEFABCDEFABCDEFABCD' WHERE id"
                        + " = 1|table photo",
                "UPDATE photo SET bytes = 5 WHERE id = 2|Row 2 of table photo is not as the edit log has it.",
                "UPDATE visit SET claimed = 'all new'|Row 1 of table visit is not as the edit log has it.",
                "UPDATE edit_log SET label = 'tidied' WHERE id = 3|Entry 3 of the edit log does not follow",
                "UPDATE edit_log SET at = '2026-03-03T10:15:30Z' WHERE id = 4|Entry 4 of the edit log does not follow",
                "UPDATE edit_log SET who = 'somebody' WHERE id = 2|Entry 2 of the edit log does not follow",
                "UPDATE edit_log SET changes = '' WHERE id = 3|Entry 3 of the edit log does not follow",
                "DELETE FROM edit_log WHERE id = 3|Entry 4 of the edit log does not follow",
                "DELETE FROM edit_log|hash chain",
                "DELETE FROM edit_log WHERE id > 3|once went on to entry 5",
                "UPDATE reading SET thickness_um = 25 WHERE id = 1|thickness_um is 25.0, and what was typed gives 65.0",
            })
    void whatWasChangedBesideTheLogIsFound(String statement, String said) throws Exception {
        Path visit = made();
        tamper(visit, statement);
        assertThat(audit(visit)).contains(said);
    }

    @Test
    void twoPhotosWithOneFileAreAFault() throws Exception {
        Path visit = made();
        String index = "UPDATE photo SET stored = 'originals/p1'";
        try {
            tamper(visit, index);
        } catch (java.sql.SQLException e) {
            assertThat(e.getMessage()).as("the schema itself may refuse it").contains("UNIQUE");
            return;
        }
        assertThat(audit(visit)).contains("name the same file originals/p1");
    }

    @Test
    void aLogThatWasCutIsToldAtOpeningAndEverAfter() throws Exception {
        Path visit = made();
        tamper(visit, "DELETE FROM edit_log WHERE id > 3", "DELETE FROM reading");
        try (VisitStore store = here().forEditing(visit)) {
            assertThat(told).singleElement().satisfies(report -> assertThat(report.lines())
                    .anySatisfy(line -> assertThat(line).contains("once went on to entry 5")));
            store.change("on", tx -> tx.add(RecordKind.READINGS, reading(HOOD, "80")));
        }
        assertThat(audit(visit)).contains("was cut off");
    }

    @Test
    void aHeadThatIsGoneIsAFaultOfAnAudit() throws Exception {
        Path visit = made();
        Files.delete(visit.resolve("visit.head"));
        try (VisitStore store = VisitOpening.by(CLOCK).forReading(visit)) {
            assertThat(StoreAudit.of(store)).singleElement().asString().startsWith("The file visit.head is gone");
        }
    }

    /** The newest edits lie in the write-ahead log alone while a visit is open; without it the visit is one of an hour ago. */
    @Test
    void aWriteAheadLogThatWasCutOrExchangedIsNoticed() throws Exception {
        Path visit = made();
        Path copy = folder.resolve("copy");
        byte[] early;
        try (VisitStore store = here().forEditing(visit)) {
            store.change("roof", tx -> tx.add(RecordKind.READINGS, reading(HOOD, "90")));
            early = Files.readAllBytes(visit.resolve("visit.db-wal"));
            store.change("roof again", tx -> tx.add(RecordKind.READINGS, reading(HOOD, "91")));
            copy(visit, copy);
        }
        assertThat(audit(copy)).as("whole with its log").isEmpty();
        copy(copy, folder.resolve("cut"));
        Files.write(folder.resolve("cut/visit.db-wal"), early);
        assertThat(audit(folder.resolve("cut"))).contains("once went on to entry 7");
        copy(copy, folder.resolve("without"));
        Files.delete(folder.resolve("without/visit.db-wal"));
        Files.deleteIfExists(folder.resolve("without/visit.db-shm"));
        assertThat(audit(folder.resolve("without"))).contains("once went on to entry 7");
    }

    private static void copy(Path from, Path to) throws IOException {
        Files.createDirectories(to);
        try (var files = Files.list(from)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, to.resolve(file.getFileName()));
            }
        }
    }

    /** A head that lags behind is one that a power cut kept from the disk; nothing was cut off. */
    @Test
    void aHeadThatLagsBehindIsNoFault() throws Exception {
        Path visit = made();
        String early = Files.readString(visit.resolve("visit.head"));
        try (VisitStore store = here().forEditing(visit)) {
            store.change("roof", tx -> tx.add(RecordKind.READINGS, reading(HOOD, "90")));
        }
        Files.writeString(visit.resolve("visit.head"), early);
        assertThat(audit(visit)).isEmpty();
        here().forEditing(visit).close();
        assertThat(told).isEmpty();
        assertThat(Files.readString(visit.resolve("visit.head"))).contains(" 000000000006 ");
    }

    /** The journal of an edit that was killed half way, as SQLite leaves it: readers see what was before. */
    @Test
    void nobodyReadsHalfOfAnEditThatWasCutOff() throws Exception {
        Path visit = made();
        Path killed = folder.resolve("killed");
        try (Connection connection = Database.open(visit.resolve("visit.db"))) {
            Database.ask(connection, "PRAGMA journal_mode = DELETE");
            Database.run(connection, "PRAGMA cache_size = 1");
            Database.run(connection, "BEGIN IMMEDIATE");
            Database.run(connection, "UPDATE reading SET typed = '25', thickness_um = 25");
            Database.run(connection, "PRAGMA cache_spill = ON");
            for (int i = 0; i < 400; i++) {
                Database.run(
                        connection,
                        "INSERT INTO statement (zone, condition, text) VALUES ('hood', 'sound', '" + "x".repeat(900)
                                + "')");
            }
            copy(visit, killed);
            Database.run(connection, "ROLLBACK");
        }
        assertThat(killed.resolve("visit.db-journal")).isNotEmptyFile();
        assertThat(new DatabaseFiles(new VisitFolder(killed)).hasHotJournal()).isTrue();
        Path unwritable = folder.resolve("unwritable");
        copy(killed, unwritable);
        try (VisitStore store = here().forReading(killed)) {
            assertThat(store.read().statements()).isEmpty();
            assertThat(store.<String>query(c -> Database.ask(c, "SELECT typed FROM reading")))
                    .isEqualTo("65");
        }
        VisitOpening elsewhere = VisitOpening.by(CLOCK).onThisComputer(folder.resolve("other"));
        assertThatThrownBy(() -> elsewhere.forReading(unwritable))
                .as("a journal from outside is not played back")
                .isInstanceOf(VisitUnreadable.class)
                .hasMessageContaining("in the middle of an edit");
        assertThat(unwritable.resolve("visit.db-journal")).exists();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4})
    void anOlderVisitBeginsItsChainOverWhatIsThere(int version) throws Exception {
        Path visit = Files.createDirectory(folder.resolve("old"));
        try (InputStream in = EditLogChainTest.class.getResourceAsStream("schema-%04d.db".formatted(version))) {
            Files.copy(in, visit.resolve("visit.db"));
        }
        int before;
        try (VisitStore store = here().forEditing(visit)) {
            before = store.editLog().size();
            assertThat(store.editLog()).last().satisfies(entry -> assertThat(entry.label())
                    .isEqualTo("The hash chain begins over what is there"));
            assertThat(StoreAudit.of(store)).isEmpty();
            store.change("on", tx -> tx.add(RecordKind.READINGS, reading(HOOD, "80")));
        }
        assertThat(told).isEmpty();
        assertThat(audit(visit)).isEmpty();
        tamper(visit, "UPDATE edit_log SET label = 'other' WHERE id = 1");
        assertThat(audit(visit))
                .as("the entries of before are rows it began over")
                .contains("Row 1 of table edit_log");
        assertThat(before).isGreaterThan(1);
    }

    @Test
    void anUpgradeBlessesNothingThatDidNotAgreeBefore() throws Exception {
        Path visit = made();
        tamper(visit, "UPDATE reading SET typed = '25', thickness_um = 25 WHERE id = 1");
        List<String> steps = new ArrayList<>(Schema.current().steps());
        steps.add("ALTER TABLE reading ADD COLUMN later TEXT NOT NULL DEFAULT 'x'; UPDATE photo SET bytes = bytes + 1");
        VisitOpening later = new VisitOpening(CLOCK, () -> {}, new Schema(steps));
        try (VisitStore store = later.forEditing(visit)) {
            assertThat(StoreAudit.of(store)).containsExactly("Row 1 of table reading is not as the edit log has it.");
        }
    }

    /** The hashes as the method page describes them, worked out here by another way. */
    @Test
    void hashesAndDigestsAreThoseOfTheDescription() throws Exception {
        Path visit = made();
        try (Connection connection = Database.openReadOnly(visit.resolve("visit.db"));
                Statement statement = connection.createStatement()) {
            String before = "";
            try (ResultSet row = statement.executeQuery("SELECT * FROM edit_log ORDER BY id")) {
                while (row.next()) {
                    before = HexFormat.of()
                            .formatHex(sha(
                                    "quarterlight edit log 1",
                                    before,
                                    row.getString("id"),
                                    row.getString("at"),
                                    Optional.ofNullable(row.getString("who")).orElse(""),
                                    row.getString("label"),
                                    row.getString("summary"),
                                    row.getString("changes")));
                    assertThat(row.getString("hash")).isEqualTo(before);
                }
            }
            try (ResultSet row = statement.executeQuery("SELECT changes, who FROM edit_log WHERE id = 3")) {
                String digest = Base64.getUrlEncoder()
                        .withoutPadding()
                        .encodeToString(sha(
                                "id",
                                "integer",
                                "1",
                                "outcome",
                                "text",
                                "measured",
                                "private",
                                "integer",
                                "0",
                                "thickness_um",
                                "real",
                                Long.toHexString(Double.doubleToLongBits(65)),
                                "typed",
                                "text",
                                "65",
                                "unit",
                                "text",
                                "um",
                                "zone",
                                "text",
                                "hood"));
                assertThat(row.getString(1)).isEqualTo("reading 1=" + digest);
                assertThat(row.getString(2)).isEqualTo("N. Example");
            }
            try (ResultSet row = statement.executeQuery("SELECT changes FROM edit_log WHERE id = 5")) {
                assertThat(row.getString(1)).isEqualTo("reading 2=-");
            }
        }
    }

    private static byte[] sha(String... parts) throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        for (byte[] part : Arrays.stream(parts)
                .map(part -> part.getBytes(StandardCharsets.UTF_8))
                .toList()) {
            out.writeInt(part.length);
            out.write(part);
        }
        return MessageDigest.getInstance("SHA-256").digest(bytes.toByteArray());
    }
}
