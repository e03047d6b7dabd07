package quarterlight.store.schema;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static quarterlight.store.SampleVisit.CLOCK;
import static quarterlight.store.SampleVisit.bareFacts;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import quarterlight.store.SampleVisit;
import quarterlight.store.StoreAudit;
import quarterlight.store.VisitOpening;
import quarterlight.store.VisitReader;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.store.problem.VisitTooNew;
import quarterlight.store.problem.VisitUnreadable;
import quarterlight.store.problem.VisitUnwritable;
import quarterlight.visit.VisitChoices;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.fact.FactDraft;
import quarterlight.visit.fact.Facts;
import quarterlight.visit.photo.MediaFacts;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.row.CellRefused;
import quarterlight.visit.row.RecordKind;
import quarterlight.visit.statement.Claimant;
import quarterlight.visit.statement.StatementDetails;

/** Older and newer schemas, files of others, and damaged files. */
class SchemaTest {
    /** The first schema that knows of dropped drafts. */
    private static final int DROPPED_SCHEMA = 11;

    /** The first schema with severities set by the inspector, and words of the first page. */
    private static final int DECISIONS_SCHEMA = 9;

    /** The first schema with papers and what is released of them. */
    private static final int RELEASED_SCHEMA = 8;

    /** The first schema that keeps the lens of a photo; the stored visit before it has none of what only some media have. */
    private static final int LENS_SCHEMA = 10;

    /** The first schema with claims of their own. */
    private static final int CLAIMS_SCHEMA = 6;

    private static final String NEXT = "CREATE TABLE later (id INTEGER PRIMARY KEY, text TEXT) STRICT;"
            + "INSERT INTO later (text) SELECT car FROM visit;";

    @TempDir
    Path folder;

    static List<Integer> released() {
        List<Integer> versions = new ArrayList<>();
        for (int version = 1; version <= Schema.current().version(); version++) {
            versions.add(version);
        }
        return versions;
    }

    @ParameterizedTest
    @MethodSource("released")
    void aVisitOfEachReleasedSchemaOpens(int version) throws Exception {
        Path visit = released(version);
        VisitRecord read;
        try (VisitStore store = VisitStore.openForReading(visit)) {
            read = store.read();
        }
        assertThat(read.facts()).isEqualTo(factsOf(version));
        assertThat(read.photos()).hasSize(2);
        assertThat(read.photos().get(0).file().contentId())
                .isEqualTo(
                        version < 2
                                ? Optional.empty()
                                : SampleVisit.fullPhoto(1).contentId());
        assertThat(read.photos().get(0).file().more())
                .isEqualTo(
                        version < LENS_SCHEMA
                                ? MediaFacts.NONE
                                : SampleVisit.fullPhoto(1).more());
        assertThat(kindsOf(version))
                .allSatisfy(kind -> assertThat(kind.of(read)).as(kind.word()).hasSizeGreaterThanOrEqualTo(3));
        assertThat(read.clocks()).hasSize(1);
        if (version < CLAIMS_SCHEMA) {
            assertThat(read.claims()).singleElement().satisfies(row -> {
                assertThat(row.value().text())
                        .isEqualTo(SampleVisit.fullFacts().claimed().orElseThrow());
                assertThat(row.value().by()).isEqualTo(Claimant.SELLER);
            });
            assertThat(read.statements()).allSatisfy(row -> {
                assertThat(row.value().details()).isEqualTo(StatementDetails.NONE);
                assertThat(row.value().what().words()).doesNotContain("as built");
            });
        }
        assertThat(read.statements())
                .filteredOn(row -> row.value().text().equals("shown by both photos")
                        && row.value().photos().equals(List.of(new PhotoId(2), new PhotoId(1))))
                .as("statements of several photos")
                .hasSize(version < 3 ? 0 : 1);
        try (VisitStore store = VisitStore.openForEditing(visit, CLOCK)) {
            assertThat(store.read()).isEqualTo(read);
            assertThat(StoreAudit.of(store)).isEmpty();
        }
    }

    /** What a visit of an older schema could not hold is the usual. */
    private static VisitFacts factsOf(int version) throws CellRefused {
        FactDraft full = FactDraft.of(SampleVisit.fullFacts());
        if (version < CLAIMS_SCHEMA) {
            full.put(Facts.CLAIMED, Optional.empty());
        }
        if (version < DECISIONS_SCHEMA) {
            full.put(Facts.CREDENTIALS, Optional.empty());
            full.put(Facts.CONTACT, Optional.empty());
            full.put(Facts.BRIEF, Optional.empty());
        }
        return version < 2 ? full.facts().with(VisitChoices.USUAL) : full.facts();
    }

    private static List<RecordKind<?>> kindsOf(int version) {
        int kinds = RecordKind.all().size() - (version < DECISIONS_SCHEMA ? 1 : 0) - (version < DROPPED_SCHEMA ? 1 : 0);
        return RecordKind.all()
                .subList(
                        0,
                        version < 2
                                ? 9
                                : version < CLAIMS_SCHEMA ? kinds - 3 : version < RELEASED_SCHEMA ? kinds - 1 : kinds);
    }

    private Path released(int version) throws IOException {
        Path visit = Files.createDirectory(folder.resolve("v"));
        try (InputStream in =
                SchemaTest.class.getResourceAsStream("/quarterlight/store/schema-%04d.db".formatted(version))) {
            assertThat(in).as("a stored visit of schema %d", version).isNotNull();
            Files.copy(in, visit.resolve("visit.db"));
        }
        return visit;
    }

    /** The program of a later day, whose schema has one more step. */
    private static VisitOpening later() {
        List<String> steps = new ArrayList<>(Schema.current().steps());
        steps.add(NEXT);
        return new VisitOpening(CLOCK, () -> {}, new Schema(steps));
    }

    @Test
    void theTracesOfTheFirstSchemaComeOverWhole() throws Exception {
        Path visit = released(1);
        VisitStore.openForEditing(visit, CLOCK).close();
        String cells = "SELECT group_concat(id || photo_id || kind || outline_px || scale_px_mm || zone"
                + " || coalesce(patch, '-') || coalesce(note, '-'), char(10) ORDER BY id) FROM trace";
        try (Connection before = Database.openReadOnly(visit.resolve("visit-schema-1.db"));
                Connection after = Database.openReadOnly(visit.resolve("visit.db"))) {
            assertThat(Database.ask(before, cells)).contains("POLYGON").isEqualTo(Database.ask(after, cells));
        }
    }

    @Test
    void anOlderVisitIsUpgradedAndACopyKept() throws Exception {
        Path visit = folder.resolve("v");
        VisitStore.create(visit, bareFacts(), CLOCK).close();
        int old = Schema.current().version();
        try (VisitStore store = later().forEditing(visit)) {
            assertThat(store.<String>query(c -> Database.ask(c, "SELECT text FROM later")))
                    .isEqualTo("Tamarisk");
            assertThat(store.read()).isEqualTo(VisitRecord.empty(bareFacts()));
        }
        try (Connection copy = Database.openReadOnly(visit.resolve("visit-schema-" + old + ".db"))) {
            assertThat(Schema.versionOf(copy)).isEqualTo(old);
            assertThat(VisitReader.read(copy)).isEqualTo(VisitRecord.empty(bareFacts()));
        }
        VisitTooNew e = catchThrowableOfType(VisitTooNew.class, () -> VisitStore.openForEditing(visit, CLOCK));
        assertThat(e.found()).isEqualTo(old + 1);
        assertThat(e.known()).isEqualTo(old);
        assertThat(e).hasMessageContaining("schema " + (old + 1)).hasMessageContaining("up to " + old);
        assertThatThrownBy(() -> VisitStore.openForReading(visit)).isInstanceOf(VisitTooNew.class);
        later().forEditing(visit).close();
    }

    @Test
    void aReaderOfAnOlderVisitChangesNothingOnDisk() throws Exception {
        Path visit = folder.resolve("v");
        VisitStore.create(visit, bareFacts(), CLOCK).close();
        byte[] before = Files.readAllBytes(visit.resolve("visit.db"));
        try (VisitStore store = later().forReading(visit)) {
            assertThat(store.<String>query(c -> Database.ask(c, "SELECT text FROM later")))
                    .isEqualTo("Tamarisk");
        }
        assertThat(Files.readAllBytes(visit.resolve("visit.db"))).isEqualTo(before);
        assertThat(visit.resolve("visit-schema-" + Schema.current().version() + ".db"))
                .doesNotExist();
    }

    @Test
    void anUpgradeThatFailsLeavesTheVisitAsItWas() throws Exception {
        Path visit = folder.resolve("v");
        VisitStore.create(visit, bareFacts(), CLOCK).close();
        List<String> steps = new ArrayList<>(Schema.current().steps());
        steps.add("CREATE TABLE half (id INTEGER PRIMARY KEY) STRICT; CREATE TABLE visit (id INTEGER)");
        VisitOpening faulty = new VisitOpening(CLOCK, () -> {}, new Schema(steps));
        assertThatThrownBy(() -> faulty.forEditing(visit)).isInstanceOf(VisitUnwritable.class);
        try (VisitStore store = VisitStore.openForEditing(visit, CLOCK)) {
            assertThat(store.<Long>query(
                            c -> Database.askNumber(c, "SELECT count(*) FROM sqlite_schema WHERE name = 'half'")))
                    .isZero();
            assertThat(store.read()).isEqualTo(VisitRecord.empty(bareFacts()));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "not a database at all, only words that go on for more than a hundred bytes, so that"
                        + " the header of a database could stand here, but it does not"
            })
    void aFileThatIsNoVisitIsRefused(String content) throws Exception {
        Path visit = Files.createDirectory(folder.resolve("v"));
        Files.writeString(visit.resolve("visit.db"), content);
        for (boolean edit : new boolean[] {true, false}) {
            assertThatThrownBy(() -> open(visit, edit).close())
                    .isInstanceOf(VisitUnreadable.class)
                    .hasMessageContaining(visit.toString());
        }
        assertThat(Files.readString(visit.resolve("visit.db"))).isEqualTo(content);
    }

    @Test
    void aDatabaseOfAnotherProgramIsRefusedAndLeftAlone() throws Exception {
        Path visit = Files.createDirectory(folder.resolve("v"));
        try (Connection other = Database.open(visit.resolve("visit.db"))) {
            Database.run(other, "CREATE TABLE visit (id INTEGER PRIMARY KEY)");
        }
        byte[] before = Files.readAllBytes(visit.resolve("visit.db"));
        assertThatThrownBy(() -> VisitStore.openForEditing(visit, CLOCK)).isInstanceOf(VisitUnreadable.class);
        assertThat(Files.readAllBytes(visit.resolve("visit.db"))).isEqualTo(before);
    }

    /** A file cut or changed anywhere is refused in a sentence, opens with what it holds, or is found by the audit. */
    @Test
    void aDamagedFileNeverCrashes() throws Exception {
        byte[] good = Files.readAllBytes(released(1).resolve("visit.db"));
        java.util.Random random = new java.util.Random(77);
        int told = 0;
        for (int round = 0; round < 60; round++) {
            byte[] bad = round % 2 == 0 ? java.util.Arrays.copyOf(good, random.nextInt(good.length)) : good.clone();
            for (int i = 0; round % 2 == 1 && i < 200; i++) {
                bad[random.nextInt(bad.length)] ^= (byte) (1 << random.nextInt(8));
            }
            Path visit = Files.createDirectory(folder.resolve("bad" + round));
            Files.write(visit.resolve("visit.db"), bad);
            try (VisitStore store = open(visit, round % 4 < 2)) {
                told += StoreAudit.of(store).isEmpty() ? 0 : 1;
            } catch (VisitProblem e) {
                assertThat(e.getMessage()).contains(visit.toString()).endsWith(".");
                told++;
            }
        }
        assertThat(told).as("of 60 damaged files, how many were noticed").isGreaterThan(50);
    }

    private static VisitStore open(Path visit, boolean edit) throws VisitProblem {
        return edit ? VisitStore.openForEditing(visit, CLOCK) : VisitStore.openForReading(visit);
    }

    @Test
    void rangesAreCheckedByTheSchemaItself() throws Exception {
        try (VisitStore store = VisitStore.create(folder.resolve("v"), bareFacts(), CLOCK)) {
            store.query(connection -> {
                for (String bad : List.of(
                        "INSERT INTO reading (zone, outcome, typed, unit, thickness_um) VALUES ('hood', 'measured',"
                                + " '1', 'um', 9e999)",
                        "INSERT INTO reading (zone, outcome, typed) VALUES ('hood', 'none', '1')",
                        "INSERT INTO reading (zone, outcome, view, x, y) VALUES ('hood', 'none', 'top', 1.01, 0)",
                        "INSERT INTO reading (zone, outcome, view) VALUES ('hood', 'none', 'top')",
                        "INSERT INTO sign (zone, kind, seen) VALUES ('hood', 'ripple', 2)",
                        "INSERT INTO sign (zone, kind, seen) VALUES ('hood', 'ripple', 'yes')",
                        "INSERT INTO mark (part, kind, text) VALUES (' ', 'vin', 'x')",
                        "INSERT INTO pin (photo_id, zone) VALUES (1, 'hood')",
                        "UPDATE visit SET gauge_range_um = 0",
                        "UPDATE visit SET gauge_correction = 2",
                        "INSERT INTO mark (part, kind, text, lead_days) VALUES ('block', 'casting', 'x', -1)",
                        "INSERT INTO statement (zone, kind, text, at_s) VALUES ('hood', 'sound', 'x', 9e999)",
                        "INSERT INTO photo_note (photo_id, shape, points_px) VALUES (1, 'text', '1 1')",
                        "INSERT INTO coverage_wish (evidence, want) VALUES ('spots', -1)",
                        "INSERT INTO left_out (zone, photo_id) VALUES (NULL, NULL)",
                        "INSERT INTO visit (id) VALUES (2)")) {
                    assertThatThrownBy(() -> Database.run(connection, bad))
                            .as(bad)
                            .isInstanceOf(SQLException.class);
                }
                return bareFacts();
            });
        }
    }
}
