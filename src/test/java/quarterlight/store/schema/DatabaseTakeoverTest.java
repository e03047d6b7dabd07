package quarterlight.store.schema;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static quarterlight.store.SampleVisit.CLOCK;
import static quarterlight.store.SampleVisit.HOOD;
import static quarterlight.store.SampleVisit.bareFacts;
import static quarterlight.store.SampleVisit.barePhoto;
import static quarterlight.store.SampleVisit.reading;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.store.StoreAudit;
import quarterlight.store.TakeoverReport;
import quarterlight.store.VisitOpening;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitUnreadable;
import quarterlight.visit.VisitParts;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.row.RecordKind;

/** A visit from somebody else: nothing of its database is run, what does not hold is left out, and that is told before it opens. */
class DatabaseTakeoverTest {
    @TempDir
    Path folder;

    private final List<TakeoverReport> told = new ArrayList<>();

    /** This computer, with its own settings. */
    private VisitOpening here() {
        return VisitOpening.by(CLOCK).onThisComputer(folder.resolve("settings")).telling(told::add);
    }

    /** Another one. */
    private VisitOpening there() {
        return VisitOpening.by(CLOCK).onThisComputer(folder.resolve("settings of somebody else"));
    }

    private Path made(VisitOpening opening, String name) throws Exception {
        Path visit = folder.resolve(name);
        try (VisitStore store = opening.create(visit, bareFacts())) {
            store.change("photos and readings", tx -> {
                var photo = tx.addPhoto(barePhoto(1));
                tx.addPhoto(barePhoto(2));
                tx.add(RecordKind.READINGS, reading(HOOD, "65"));
                tx.add(RecordKind.READINGS, reading(HOOD, "72.5"));
                tx.add(RecordKind.PINS, VisitParts.pin(photo, HOOD));
            });
        }
        return visit;
    }

    private static void tamper(Path visit, String... statements) throws Exception {
        try (Connection connection = Database.open(visit.resolve("visit.db"))) {
            Database.run(connection, "PRAGMA foreign_keys = OFF");
            Database.run(connection, "PRAGMA ignore_check_constraints = ON");
            for (String statement : statements) {
                Database.run(connection, statement);
            }
        }
    }

    private List<String> lines() {
        return told.stream().flatMap(report -> report.lines().stream()).toList();
    }

    @Test
    void theStatementsInTheNameOfATableAreNotRun() throws Exception {
        Path victim = made(here(), "victim");
        Path visit = made(there(), "received");
        String name = "p AFTER INSERT ON main.pin BEGIN SELECT 1; END; ATTACH '" + victim.resolve("visit.db")
                + "' AS z; UPDATE z.reading SET thickness_um = 111; DELETE FROM z.edit_log; DETACH z; --";
        tamper(visit, "CREATE TABLE \"" + name.replace("\"", "\"\"") + "\" (id INTEGER PRIMARY KEY, a TEXT)");
        byte[] before = Files.readAllBytes(victim.resolve("visit.db"));
        for (VisitOpening opening : List.of(here(), VisitOpening.by(CLOCK))) {
            try (VisitStore store = opening.forEditing(visit)) {
                store.change("reading", tx -> tx.add(RecordKind.READINGS, reading(HOOD, "70")));
                store.undo();
            }
        }
        assertThat(victim.resolve("visit.db")).hasBinaryContent(before);
        assertThat(lines())
                .singleElement()
                .asString()
                .contains("table \"p AFTER INSERT")
                .contains("left out");
    }

    @Test
    @Timeout(60)
    void anEndlessViewInPlaceOfATableIsNeverAsked() throws Exception {
        Path visit = made(there(), "received");
        tamper(
                visit,
                "DROP TABLE reading",
                "CREATE VIEW reading AS WITH RECURSIVE n(id) AS (SELECT 1 UNION ALL SELECT id + 1 FROM n)"
                        + " SELECT count(*) AS id FROM n",
                "CREATE VIEW endless AS WITH RECURSIVE n(id) AS (SELECT 1 UNION ALL SELECT id + 1 FROM n) SELECT id"
                        + " FROM n");
        try (VisitStore store = here().forReading(visit)) {
            assertThat(store.read().readings()).isEmpty();
            assertThat(store.read().photos()).hasSize(2);
        }
        assertThat(lines())
                .anyMatch(line -> line.startsWith("Table reading is no table"))
                .anyMatch(line -> line.contains("view \"endless\""));
    }

    @Test
    void theReceivedFileOfTheFixtureOpensWithAllItsRowsAndWithoutTheTable() throws Exception {
        Path visit = Files.createDirectory(folder.resolve("v"));
        try (InputStream in = DatabaseTakeoverTest.class.getResourceAsStream(
                "/quarterlight/store/takeover/visit-with-sql-in-a-table-name.db")) {
            Files.copy(in, visit.resolve("visit.db"));
        }
        try (VisitStore store = here().forEditing(visit)) {
            assertThat(store.read().readings()).hasSize(101);
            assertThat(store.read().photos()).hasSize(70);
            assertThat(store.tables()).noneMatch(table -> table.table().startsWith("p "));
        }
        assertThat(lines()).hasSize(1);
        try (VisitStore store = here().forReading(visit)) {
            assertThat(StoreAudit.of(store))
                    .as("once it is taken over it is sound")
                    .isEmpty();
        }
        assertThat(visit.resolve("visit-schema-3.db")).as("as it was received").exists();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "CREATE TRIGGER x AFTER INSERT ON reading BEGIN DELETE FROM photo; END|trigger \"x\"",
                "CREATE VIEW x AS SELECT 1|view \"x\"",
                "CREATE TABLE x (id INTEGER PRIMARY KEY)|table \"x\"",
                "CREATE INDEX x ON reading (zone)|index \"x\"",
                "DROP INDEX pin_by_photo|lacks the index \"pin_by_photo\"",
                "ALTER TABLE reading ADD COLUMN odd TEXT|column \"odd\"",
                "ALTER TABLE reading RENAME COLUMN note TO remark|lacks the column note",
                "CREATE TABLE IF NOT EXISTS \"a\"\"b'c\" (id INTEGER PRIMARY KEY)|table \"a\"b'c\"",
            })
    void whateverTheSchemaHasBesideIsLeftOutAndTold(String statement, String said) throws Exception {
        Path visit = made(here(), "v");
        tamper(visit, statement);
        try (VisitStore store = here().forReading(visit)) {
            assertThat(store.read().readings()).hasSize(2);
            assertThat(String.join("\n", StoreAudit.of(store)))
                    .as("the audit says so too")
                    .contains(said);
        }
        assertThat(String.join("\n", lines())).contains(said);
        try (VisitStore store = here().forEditing(visit)) {
            store.change("photo", tx -> tx.addPhoto(barePhoto(3)));
            assertThat(store.read().photos()).hasSize(3);
        }
        assertThat(visit.resolve("visit-received.db")).exists();
        told.clear();
        here().forEditing(visit).close();
        assertThat(told).as("the second time it is one's own").isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "UPDATE photo SET stored = '/etc/passwd' WHERE id = 2|photo|elsewhere than in originals/",
                "UPDATE photo SET stored = 'originals/../../private.jpg' WHERE id = 2|photo|elsewhere than in"
                        + " originals/",
                "UPDATE photo SET stored = 'originals/..' WHERE id = 2|photo|elsewhere than in originals/",
                "UPDATE photo SET stored = 'originals/a\\b' WHERE id = 2|photo|elsewhere than in originals/",
                "UPDATE photo SET stored = 'originals/p1' WHERE id = 2|photo|it breaks the rule photo.stored",
                "UPDATE photo SET orientation = 9 WHERE id = 2|photo|orientation BETWEEN 1 AND 8",
                "UPDATE photo SET sha256 = 'x' WHERE id = 2|photo|sha256",
                "UPDATE reading SET unit = 'ell' WHERE id = 2|reading|ell",
                "UPDATE reading SET typed = '1e999999999' WHERE id = 2|reading|digits",
                "UPDATE reading SET zone = 'NO ZONE' WHERE id = 2|reading|NO ZONE",
                "UPDATE reading SET x = 7, y = 7, view = 'top' WHERE id = 2|reading|x BETWEEN 0 AND 1",
                "UPDATE pin SET photo_id = 77|pin|names a row of table photo that is not there",
            })
    void aRowThatDoesNotHoldIsLeftOutAndTheOthersStay(String statement, String table, String said) throws Exception {
        Path visit = made(there(), "v");
        if (said.contains("photo.stored")) {
            tamper(visit, "DROP INDEX photo_by_stored");
        }
        tamper(visit, statement);
        try (VisitStore store = here().forEditing(visit)) {
            int kept = table.equals("photo")
                    ? store.read().photos().size()
                    : table.equals("pin")
                            ? store.read().pins().size() + 1
                            : store.read().readings().size();
            assertThat(kept).isEqualTo(1);
        }
        assertThat(lines()).anySatisfy(line -> assertThat(line)
                .startsWith("Row ")
                .contains("of table " + table)
                .contains(said)
                .endsWith("."));
        try (VisitStore store = here().forReading(visit)) {
            assertThat(StoreAudit.of(store))
                    .as("the log tells that it was left out")
                    .isEmpty();
            assertThat(store.editLog()).last().satisfies(entry -> assertThat(entry.label())
                    .isEqualTo("Checked on receipt"));
        }
    }

    @Test
    void whatWasTypedCountsAgainstANumberThatWasSoftened() throws Exception {
        Path visit = made(there(), "v");
        tamper(visit, "UPDATE reading SET thickness_um = 25 WHERE id = 1");
        try (VisitStore store = here().forEditing(visit)) {
            assertThat(store.<String>query(c -> Database.ask(c, "SELECT thickness_um FROM reading WHERE id = 1")))
                    .isEqualTo("65.0");
        }
        assertThat(lines())
                .containsExactly("Row 1 of table reading: thickness_um is 25.0, and what was typed gives 65.0;"
                        + " what was typed was taken.");
    }

    @Test
    void aSoundVisitOfAnotherComputerIsTakenOverWithoutAWordAndEqual() throws Exception {
        Path visit = made(there(), "v");
        Object before;
        try (VisitStore store = there().forReading(visit)) {
            before = List.of(store.read(), store.editLog(), store.tables());
        }
        try (VisitStore store = here().forEditing(visit)) {
            assertThat(List.of(store.read(), store.editLog(), store.tables())).isEqualTo(before);
            assertThat(StoreAudit.of(store)).isEmpty();
        }
        assertThat(told).isEmpty();
        assertThat(visit.resolve("visit-received.db")).doesNotExist();
    }

    @Test
    void aReceivedDatabaseIsReadWithoutChangingAnythingOfTheFolder() throws Exception {
        Path visit = made(there(), "v");
        tamper(visit, "CREATE VIEW x AS SELECT 1");
        byte[] before = Files.readAllBytes(visit.resolve("visit.db"));
        try (VisitStore store = here().forReading(visit)) {
            assertThat(store.read().pins()).extracting(Recorded::id).hasSize(1);
        }
        assertThat(visit.resolve("visit.db")).hasBinaryContent(before);
        assertThat(told).hasSize(1);
    }

    @Test
    void aViewInThePlaceOfATableGivesNoRows() throws Exception {
        Path visit = made(there(), "v");
        tamper(
                visit,
                "DROP TABLE statement",
                "CREATE VIEW statement AS WITH RECURSIVE n(x) AS (SELECT 1 UNION ALL SELECT x + 1 FROM n) SELECT x AS"
                        + " id FROM n");
        try (VisitStore store = here().forReading(visit)) {
            assertThat(store.read().statements()).isEmpty();
        }
        assertThat(lines()).anySatisfy(line -> assertThat(line).contains("Table statement is no table"));
    }

    @Test
    void aLinkInThePlaceOfTheDatabaseIsRefused() throws Exception {
        Path real = made(here(), "real");
        Path visit = Files.createDirectory(folder.resolve("v"));
        Files.createSymbolicLink(visit.resolve("visit.db"), real.resolve("visit.db"));
        assertThatThrownBy(() -> here().forReading(visit))
                .isInstanceOf(VisitUnreadable.class)
                .hasMessageContaining("link");
    }

    @Test
    void aLockThatCameWithSomethingInItIsMadeAnew() throws Exception {
        Path visit = made(there(), "v");
        Files.writeString(visit.resolve("visit.lock"), "something");
        here().forEditing(visit).close();
        assertThat(visit.resolve("visit.lock")).isEmptyFile();
    }
}
