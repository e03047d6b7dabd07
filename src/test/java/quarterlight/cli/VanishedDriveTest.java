package quarterlight.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.EditFailed;
import quarterlight.store.problem.VisitUnreadable;
import quarterlight.store.problem.VisitUnwritable;
import quarterlight.visit.row.RecordKind;

/** A visit whose folder goes away while it is open, as when a drive is pulled out: a sentence, and nothing is lost. */
class VanishedDriveTest {
    @TempDir
    private Path folder;

    private Bench bench;
    private Path visit;
    private Path away;

    @BeforeEach
    void makeAVisit() {
        bench = new Bench(folder);
        visit = Path.of(bench.visit());
        away = folder.resolve("away");
    }

    private void pullOut() {
        try {
            Files.move(visit, away);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private void plugIn() throws IOException {
        assertThat(visit).as("nothing new was made where the visit was").doesNotExist();
        Files.move(away, visit);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "zones VISIT",
                "history VISIT",
                "rust VISIT",
                "findings VISIT",
                "suggest VISIT",
                "gaps VISIT",
                "pages VISIT",
                "pages VISIT --out OUT",
                "sheet VISIT --out OUT",
                "export VISIT OUT",
                "export VISIT OUT --as xlsx",
                "archive VISIT OUT",
                "intake VISIT CARD",
                "set VISIT client=Somebody",
                "add readings VISIT TABLE",
                "add signs VISIT SIGNS",
                "listen VISIT",
                "visits HOME",
                "backup OUT HOME"
            })
    void aVerbAtWorkEndsInASentence(String call) throws IOException {
        String before = bench.state(visit.toString());
        Path card = Files.createDirectories(folder.resolve("card"));
        Files.writeString(card.resolve("a.jpg"), "no photo at all");
        String table = bench.file("t.csv", "zone,value,unit\nhood,5.1,mil\n");
        String signs = bench.file("s.csv", "zone,sign,seen\nhood,overspray,yes\n");
        AtomicBoolean pulled = new AtomicBoolean();
        Bench.Outcome outcome = bench.during(() -> {
                    if (!pulled.getAndSet(true)) {
                        pullOut();
                    }
                })
                .run(Stream.of(call.split(" "))
                        .map(word -> switch (word) {
                            case "VISIT" -> visit.toString();
                            case "OUT" -> folder.resolve("out").toString();
                            case "CARD" -> card.toString();
                            case "TABLE" -> table;
                            case "SIGNS" -> signs;
                            case "HOME" -> folder.toString();
                            default -> word;
                        })
                        .toArray(String[]::new));
        assertThat(outcome.err()).doesNotContain("Exception", "\tat ", "fault of the program");
        assertThat(outcome.status()).isBetween(0, 3);
        if (pulled.get()) {
            plugIn();
        }
        String after = bench.state(visit.toString());
        if (outcome.status() > 1) {
            assertThat(outcome.err()).isNotEmpty();
            assertThat(after).as("nothing half done").isEqualTo(before);
        }
    }

    @Test
    void anEditOfAVisitThatIsGoneIsRefusedAndWhatWasSavedBeforeIsThereAgain() throws Exception {
        try (VisitStore store = VisitStore.openForEditing(visit, Clock.system(ZoneId.of("UTC")))) {
            var pins = store.read().pins();
            store.change(
                    "take one away",
                    tx -> tx.remove(RecordKind.PINS, pins.get(0).id()));
            pullOut();
            assertThatThrownBy(() -> store.change("take another away", tx -> {}))
                    .isInstanceOf(VisitUnwritable.class)
                    .hasMessageContainingAll("no longer there", "drive", "open the visit again", visit.toString());
            assertThatThrownBy(store::undo).isInstanceOf(VisitUnwritable.class);
            plugIn();
            assertThat(store.undo()).contains("take one away");
            assertThat(store.read().pins()).hasSameSizeAs(pins);
        }
        assertThat(bench.state(visit.toString())).contains("Undo take one away");
    }

    /** What SQLite says once a drive was pulled whose folder the system still knows: first that the disk fails, then that the file is none of its own. */
    @Test
    void aFileOnADiskThatFailedIsNotCalledDamaged() throws Exception {
        try (VisitStore store = VisitStore.openForEditing(visit, Clock.system(ZoneId.of("UTC")))) {
            assertThatThrownBy(() -> asked(store, SQLiteErrorCode.SQLITE_NOTADB))
                    .as("on a disk that answers")
                    .hasMessageContaining("damaged");
            assertThatThrownBy(() -> edited(store, SQLiteErrorCode.SQLITE_IOERR_WRITE))
                    .hasMessageContainingAll("does not answer", "drive was taken away", "Do this step again");
            assertThatThrownBy(() -> asked(store, SQLiteErrorCode.SQLITE_NOTADB))
                    .isInstanceOf(VisitUnreadable.class)
                    .hasMessageContainingAll("does not answer", visit.toString())
                    .hasMessageNotContaining("damaged");
            assertThatThrownBy(() -> edited(store, SQLiteErrorCode.SQLITE_CORRUPT))
                    .hasMessageContaining("does not answer");
            assertThatThrownBy(() -> edited(store, SQLiteErrorCode.SQLITE_FULL)).hasMessageContaining("full");
            store.change("it is back", tx -> {});
        }
    }

    private static void asked(VisitStore store, SQLiteErrorCode said) throws VisitUnreadable {
        store.query(connection -> {
            throw new SQLiteException(said.message, said);
        });
    }

    private static void edited(VisitStore store, SQLiteErrorCode said) throws VisitUnwritable {
        store.change("x", tx -> {
            throw new EditFailed(new SQLiteException(said.message, said));
        });
    }

    @Test
    void aDeletedVisitTakesNoMoreEdits() throws Exception {
        try (VisitStore store = VisitStore.openForEditing(visit, Clock.system(ZoneId.of("UTC")))) {
            try (Stream<Path> files = Files.walk(visit)) {
                for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            }
            assertThatThrownBy(() -> store.change("x", tx -> {})).isInstanceOf(VisitUnwritable.class);
            Files.createDirectories(visit);
            Files.writeString(visit.resolve("visit.db"), "another one");
            assertThatThrownBy(() -> store.change("x", tx -> {}))
                    .as("another file in its place is not the visit")
                    .isInstanceOf(VisitUnwritable.class);
        }
    }
}
