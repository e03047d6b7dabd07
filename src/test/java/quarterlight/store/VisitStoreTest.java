package quarterlight.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static quarterlight.store.SampleVisit.CLOCK;
import static quarterlight.store.SampleVisit.HOOD;
import static quarterlight.store.SampleVisit.bareFacts;
import static quarterlight.store.SampleVisit.barePhoto;
import static quarterlight.store.SampleVisit.fullFacts;
import static quarterlight.store.SampleVisit.fullPhoto;
import static quarterlight.store.SampleVisit.reading;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.util.ArrayList;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterlight.store.problem.VisitExists;
import quarterlight.store.problem.VisitLocked;
import quarterlight.store.problem.VisitMissing;
import quarterlight.store.problem.VisitProblem;
import quarterlight.store.problem.VisitUnreadable;
import quarterlight.store.problem.VisitUnwritable;
import quarterlight.store.schema.Database;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.VisitParts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.row.RecordKind;

class VisitStoreTest {
    @TempDir
    Path folder;

    @Test
    void aNewVisitHoldsItsFactsAndNothingElse() throws Exception {
        try (VisitStore store = VisitStore.create(folder.resolve("v"), fullFacts(), CLOCK)) {
            assertThat(store.read()).isEqualTo(VisitRecord.empty(fullFacts()));
        }
        try (Stream<Path> files = Files.list(folder.resolve("v"))) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .containsExactlyInAnyOrder(
                            "visit.db", "visit.head", "visit.quarterlight", "visit.lock", "originals", "pages");
        }
    }

    @Test
    void factsAreToldOnceAndAheadOfPhotosThatCannotBeRead() throws Exception {
        Path path = folder.resolve("v");
        List<VisitFacts> told = new ArrayList<>();
        try (VisitStore store = VisitStore.create(path, fullFacts(), CLOCK)) {
            VisitRecord read = store.read(told::add);
            assertThat(told).containsExactly(fullFacts());
            assertThat(read.facts()).isEqualTo(fullFacts());
        }
        told.clear();
        try (Connection connection = Database.open(path.resolve("visit.db"))) {
            Database.run(
                    connection,
                    "INSERT INTO photo (name, stored, sha256, bytes, kind, type, orientation) VALUES ('a', 'originals/a', '"
                            + "0".repeat(64) + "', 0, 'nonsense', 'JPEG', 1)");
        }
        try (VisitStore store = VisitStore.openForReading(path)) {
            assertThatThrownBy(() -> store.read(told::add)).isInstanceOf(VisitUnreadable.class);
            assertThat(told).containsExactly(fullFacts());
        }
    }

    @Test
    void anExistingPathIsRefusedAndLeftAlone() throws IOException {
        Path taken = Files.createDirectory(folder.resolve("taken"));
        VisitExists e = catchThrowableOfType(VisitExists.class, () -> VisitStore.create(taken, bareFacts(), CLOCK));
        assertThat(e.path()).isEqualTo(taken);
        assertThat(e).hasMessageContaining(taken.toString()).hasMessageContaining("exists already");
        assertThat(taken).isEmptyDirectory();
    }

    @Test
    void aVisitThatCannotBeMadeLeavesNothingBehind() throws IOException {
        Path file = Files.createFile(folder.resolve("file"));
        assertThatThrownBy(() -> VisitStore.create(file.resolve("v"), bareFacts(), CLOCK))
                .isInstanceOf(VisitUnwritable.class);
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).containsExactly(file);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"what?mode=ro", "100%41", "a b#c", "größe", "it's;one", "cache=shared&x"})
    void anyFolderNameWillDo(String name) throws Exception {
        Path path = folder.resolve(name);
        try (VisitStore store = VisitStore.create(path, bareFacts(), CLOCK)) {
            store.edit("a reading", tx -> tx.add(RecordKind.READINGS, reading(HOOD, "101.0")));
        }
        assertThat(path.resolve("visit.db")).isRegularFile();
        try (VisitStore store = VisitStore.openForReading(path)) {
            assertThat(store.read().readings()).hasSize(1);
        }
    }

    @Test
    void aMissingVisitIsSaidToBeMissing() {
        assertThatThrownBy(() -> VisitStore.openForReading(folder.resolve("nowhere")))
                .isInstanceOf(VisitMissing.class)
                .hasMessageContaining("nowhere");
        assertThatThrownBy(() -> VisitStore.openForEditing(folder, CLOCK)).isInstanceOf(VisitMissing.class);
    }

    @Test
    void aSecondEditorIsRefusedAndTheFirstStaysTheOnlyOne() throws Exception {
        Path path = folder.resolve("v");
        VisitStore first = VisitStore.create(path, bareFacts(), CLOCK);
        for (int i = 0; i < 2; i++) {
            assertThatThrownBy(() -> VisitStore.openForEditing(path, CLOCK)).isInstanceOf(VisitLocked.class);
        }
        first.close();
        VisitStore.openForEditing(path, CLOCK).close();
    }

    @Test
    void aReaderSeesEachEditWhileAnotherEdits() throws Exception {
        Path path = folder.resolve("v");
        try (VisitStore editor = VisitStore.create(path, bareFacts(), CLOCK);
                VisitStore reader = VisitStore.openForReading(path)) {
            for (int i = 1; i <= 3; i++) {
                editor.edit("a reading", tx -> tx.add(RecordKind.READINGS, reading(HOOD, "101.0")));
                assertThat(reader.read().readings()).hasSize(i);
            }
            editor.edit("a reading", tx -> {
                tx.add(RecordKind.READINGS, reading(HOOD, "102"));
                try {
                    return reader.read().readings().size();
                } catch (VisitUnreadable e) {
                    throw new AssertionError(e);
                }
            });
            assertThat(reader.isEditable()).isFalse();
            assertThatThrownBy(() -> reader.change("x", tx -> {})).isInstanceOf(IllegalStateException.class);
        }
    }

    @Test
    void aClosedVisitIsOnePlainDatabaseFile() throws Exception {
        Path path = folder.resolve("v");
        try (VisitStore store = VisitStore.create(path, bareFacts(), CLOCK)) {
            store.edit("a reading", tx -> tx.add(RecordKind.READINGS, reading(HOOD, "101.0")));
            assertThat(path.resolve("visit.db-wal")).exists();
        }
        assertThat(path.resolve("visit.db-wal")).doesNotExist();
        assertThat(path.resolve("visit.db-shm")).doesNotExist();
        byte[] header = Files.readAllBytes(path.resolve("visit.db"));
        assertThat(header[18]).as("journal mode byte: 1 is a rollback journal").isEqualTo((byte) 1);
        try (var connection = Database.openImmutable(path.resolve("visit.db"))) {
            assertThat(VisitReader.read(connection).readings()).hasSize(1);
        }
    }

    @Test
    void photosComeBackAsTheyWent() throws Exception {
        try (VisitStore store = VisitStore.create(folder.resolve("v"), bareFacts(), CLOCK)) {
            PhotoId full = store.edit("a", tx -> tx.addPhoto(fullPhoto(1)));
            PhotoId bare = store.edit("b", tx -> tx.addPhoto(barePhoto(2)));
            assertThat(store.read().photos()).extracting(p -> p.file()).containsExactly(fullPhoto(1), barePhoto(2));
            assertThat(store.<Optional<PhotoId>>edit("c", tx -> tx.findPhoto(SampleVisit.hash(2))))
                    .contains(bare);
            store.change("d", tx -> {
                tx.setAside(bare, Optional.of("blurred"));
                tx.setSharpness(bare, OptionalDouble.of(7.5));
                tx.updatePhoto(full, barePhoto(1));
            });
            assertThat(store.read().photo(bare).orElseThrow().setAside()).contains("blurred");
            assertThat(store.read().photo(bare).orElseThrow().file().sharpness())
                    .hasValue(7.5);
            assertThat(store.read().photo(full).orElseThrow().file()).isEqualTo(barePhoto(1));
        }
    }

    @Test
    void factsAreReplacedWhole() throws Exception {
        try (VisitStore store = VisitStore.create(folder.resolve("v"), fullFacts(), CLOCK)) {
            store.change("facts", tx -> tx.setFacts(bareFacts()));
            assertThat(store.read().facts()).isEqualTo(bareFacts());
            store.change("facts", tx -> tx.setFacts(fullFacts()));
            assertThat(store.read().facts()).isEqualTo(fullFacts());
        }
    }

    @Test
    void anEditThatThrowsKeepsNothing() throws Exception {
        try (VisitStore store = VisitStore.create(folder.resolve("v"), bareFacts(), CLOCK)) {
            assertThatThrownBy(() -> store.edit("half", tx -> {
                        tx.add(RecordKind.READINGS, reading(HOOD, "101"));
                        throw new NoSuchElementException("stop");
                    }))
                    .isInstanceOf(NoSuchElementException.class);
            assertThat(store.read()).isEqualTo(VisitRecord.empty(bareFacts()));
            assertThat(store.undoLabel()).isEmpty();
            assertThat(store.editLog()).as("the making of the visit alone").hasSize(1);
        }
    }

    @Test
    void aPinToAPhotoThatIsNotThereIsRefused() throws Exception {
        Pin pin = VisitParts.pin(new PhotoId(99), HOOD);
        try (VisitStore store = VisitStore.create(folder.resolve("v"), bareFacts(), CLOCK)) {
            assertThatThrownBy(() -> store.edit("pin", tx -> tx.add(RecordKind.PINS, pin)))
                    .isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> store.change("no row", tx -> tx.remove(RecordKind.PINS, new RecordId(5))))
                    .isInstanceOf(NoSuchElementException.class);
            assertThat(store.read().pins()).isEmpty();
        }
    }

    @Test
    void anEditWithinAnEditAndATransactionKeptTooLongAreMistakes() throws Exception {
        try (VisitStore store = VisitStore.create(folder.resolve("v"), bareFacts(), CLOCK)) {
            assertThatThrownBy(() -> store.edit("outer", tx -> {
                        try {
                            return store.read().photos().size();
                        } catch (VisitUnreadable e) {
                            return -1;
                        }
                    }))
                    .isInstanceOf(IllegalStateException.class);
            VisitTx late = store.edit("keep", tx -> tx);
            assertThatThrownBy(late::read).isInstanceOf(IllegalStateException.class);
        }
    }

    @Test
    void listenersHearOfSavedChangesOnly() throws Exception {
        List<VisitChange> heard = new ArrayList<>();
        try (VisitStore store = VisitStore.create(folder.resolve("v"), bareFacts(), CLOCK)) {
            VisitStore.Registration registration = store.onChange(heard::add);
            store.edit("one", tx -> tx.add(RecordKind.READINGS, reading(HOOD, "101")));
            store.change("nothing", tx -> tx.setFacts(bareFacts()));
            store.undo();
            store.redo();
            registration.close();
            store.undo();
        }
        assertThat(heard)
                .containsExactly(
                        new VisitChange(VisitChange.Way.EDIT, "one"),
                        new VisitChange(VisitChange.Way.UNDO, "one"),
                        new VisitChange(VisitChange.Way.REDO, "one"));
    }

    @Test
    void theEditLogTellsWhatChangedWhen() throws Exception {
        try (VisitStore store = VisitStore.create(folder.resolve("v"), bareFacts(), CLOCK)) {
            store.edit(
                    "add 2 readings",
                    tx -> tx.addAll(RecordKind.READINGS, List.of(reading(HOOD, "101"), reading(HOOD, "102"))));
            store.undo();
            assertThat(store.editLog())
                    .extracting(e -> e.at() + " " + e.label() + ": " + e.summary())
                    .containsExactly(
                            "2026-03-02T10:15:30Z Visit made: visit found 1",
                            "2026-03-02T10:15:30Z add 2 readings: reading added 2",
                            "2026-03-02T10:15:30Z Undo add 2 readings: reading removed 2");
        }
    }

    @Test
    void theGuardIsAskedBeforeEachUse() throws Exception {
        boolean[] forbidden = {false};
        VisitOpening opening = VisitOpening.by(CLOCK).guardedBy(() -> {
            if (forbidden[0]) {
                throw new IllegalStateException("not on this thread");
            }
        });
        try (VisitStore store = opening.create(folder.resolve("v"), bareFacts())) {
            forbidden[0] = true;
            assertThatThrownBy(store::read).hasMessage("not on this thread");
            assertThatThrownBy(store::undo).hasMessage("not on this thread");
            assertThatThrownBy(() -> store.change("x", tx -> {})).hasMessage("not on this thread");
            assertThatThrownBy(() -> opening.forReading(folder.resolve("v"))).hasMessage("not on this thread");
            assertThat(store.undoLabel()).isEmpty();
        }
    }

    @Test
    void aFullDiskEndsInASentenceAndTheVisitStandsAsBefore() throws Exception {
        Path path = folder.resolve("v");
        try (VisitStore store = VisitStore.create(path, bareFacts(), CLOCK)) {
            store.edit("one", tx -> tx.add(RecordKind.READINGS, reading(HOOD, "101")));
            store.query(c -> Database.ask(c, "PRAGMA max_page_count = 1"));
            assertThatThrownBy(() -> store.change("too much", tx -> {
                        for (int i = 0; i < 500; i++) {
                            tx.addPhoto(fullPhoto(i));
                        }
                    }))
                    .isInstanceOf(VisitUnwritable.class)
                    .hasMessageContaining(path.toString())
                    .hasMessageContaining("the disk is full");
            assertThat(store.read().photos()).isEmpty();
            store.query(c -> Database.ask(c, "PRAGMA max_page_count = 1000000"));
            assertThat(store.undo()).contains("one");
            assertThat(store.redo()).contains("one");
        }
        try (VisitStore store = VisitStore.openForEditing(path, CLOCK)) {
            assertThat(store.read().readings()).hasSize(1);
        }
    }

    @Test
    void aReaderThatStaysDoesNotHinderTheEditorFromClosing() throws Exception {
        Path path = folder.resolve("v");
        VisitStore editor = VisitStore.create(path, bareFacts(), CLOCK);
        try (VisitStore reader = VisitStore.openForReading(path)) {
            editor.edit("one", tx -> tx.add(RecordKind.READINGS, reading(HOOD, "101")));
            assertThat(reader.read().readings()).hasSize(1);
            editor.close();
            assertThat(reader.read().readings()).hasSize(1);
            try (VisitStore next = VisitStore.openForEditing(path, CLOCK)) {
                next.edit("two", tx -> tx.add(RecordKind.READINGS, reading(HOOD, "102")));
            }
            assertThat(reader.read().readings()).hasSize(2);
        }
        VisitStore.openForEditing(path, CLOCK).close();
        assertThat(path.resolve("visit.db-wal")).doesNotExist();
    }

    @Test
    void callsFromSeveralThreadsTakeTurns() throws Exception {
        try (VisitStore store = VisitStore.create(folder.resolve("v"), bareFacts(), CLOCK)) {
            List<Thread> threads = new ArrayList<>();
            List<Throwable> failures = java.util.Collections.synchronizedList(new ArrayList<>());
            for (int t = 0; t < 4; t++) {
                Thread thread = new Thread(() -> {
                    for (int i = 0; i < 25; i++) {
                        try {
                            store.edit(
                                    "pair",
                                    tx -> tx.addAll(
                                            RecordKind.READINGS, List.of(reading(HOOD, "1"), reading(HOOD, "2"))));
                            assertThat(store.read().readings().size() % 2).isZero();
                        } catch (VisitProblem | RuntimeException | AssertionError e) {
                            failures.add(e);
                        }
                    }
                });
                threads.add(thread);
                thread.start();
            }
            for (Thread thread : threads) {
                thread.join();
            }
            assertThat(failures).isEmpty();
            assertThat(store.read().readings()).hasSize(200);
        }
    }
}
