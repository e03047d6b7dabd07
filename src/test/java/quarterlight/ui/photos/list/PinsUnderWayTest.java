package quarterlight.ui.photos.list;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.car.ZoneId;
import quarterlight.diagram.ink.Ramp;
import quarterlight.diagram.ink.TextMeasure;
import quarterlight.edit.EditRefused;
import quarterlight.edit.fact.FactEdits;
import quarterlight.edit.row.RowEdits;
import quarterlight.store.SampleVisit;
import quarterlight.store.VisitStore;
import quarterlight.table.ZoneTable;
import quarterlight.task.DirectJobRunner;
import quarterlight.ui.kit.DeskParts;
import quarterlight.ui.kit.Problems;
import quarterlight.ui.kit.SettingsFile;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.visit.VisitOpener;
import quarterlight.visit.VisitParts;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.row.RecordKind;

/** Pins are shown while a slow store still writes them, are undone in their order, and are gone again if the store refuses them. */
@Timeout(60)
class PinsUnderWayTest {
    private static final ZoneId HOOD = new ZoneId("hood");
    private static final ZoneId ROOF = new ZoneId("roof");
    private static final int PHOTOS = 5;

    @TempDir
    Path folder;

    private final AtomicReference<Throwable> told = new AtomicReference<>();
    private OpenVisit visit;
    private PhotosModel model;

    @BeforeEach
    void open() throws Exception {
        Path path = folder.resolve("visit");
        try (VisitStore store = VisitStore.create(
                path,
                new FactEdits(ZoneTable.load())
                        .start(Map.of("car", "Tamarisk", "style", "coupe", "timezone", "UTC"), ZoneOffset.UTC),
                SampleVisit.CLOCK)) {
            store.change("take in", tx -> {
                for (int i = 1; i <= PHOTOS; i++) {
                    tx.addPhoto(SampleVisit.barePhoto(i));
                }
            });
        }
        DeskParts parts = new DeskParts(
                Texts.load(),
                SampleVisit.CLOCK,
                ZoneTable.load(),
                (where, facts) -> Map.of(),
                SettingsFile.read(folder.resolve("settings/settings.properties"), Runnable::run),
                new DirectJobRunner(),
                new Told(),
                Ramp.load(),
                TextMeasure.bundled());
        CompletableFuture<OpenVisit> opened = new CompletableFuture<>();
        new VisitOpener(parts).open(path, opened::complete);
        visit = opened.get(1, TimeUnit.SECONDS);
        onEvents(() -> model = new PhotosModel(visit));
    }

    @AfterEach
    void close() throws Exception {
        CountDownLatch closed = new CountDownLatch(1);
        onEvents(() -> visit.close(closed::countDown));
        assertThat(closed.await(20, TimeUnit.SECONDS)).isTrue();
    }

    private final class Told implements Problems {
        @Override
        public void tell(String sentence) {
            told.set(new AssertionError(sentence));
        }

        @Override
        public void remark(String sentence) {
            tell(sentence);
        }

        @Override
        public void failed(Throwable failure) {
            told.set(failure);
        }

        @Override
        public boolean confirm(String question, String goOn) {
            return true;
        }

        @Override
        public Optional<String> ask(String question, String title, String proposed) {
            return Optional.empty();
        }
    }

    private static Pin pin(long photo, ZoneId zone) {
        return VisitParts.pin(new PhotoId(photo), zone);
    }

    private void make(Pin pin) {
        visit.pin(List.of(pin), store -> new RowEdits(store).add(RecordKind.PINS, List.of(pin)), done -> {}, told::set);
    }

    /** Keeps the store busy until the latch is open. */
    private CountDownLatch slowStore() throws Exception {
        CountDownLatch free = new CountDownLatch(1);
        onEvents(() -> visit.edit(store -> free.await(30, TimeUnit.SECONDS), done -> {}));
        return free;
    }

    private PhotoItem item(long photo) {
        return model.all().find(new PhotoId(photo)).orElseThrow();
    }

    private static void onEvents(Runnable work) throws InterruptedException, InvocationTargetException {
        SwingUtilities.invokeAndWait(work);
    }

    private static <T> T asked(Supplier<T> question) throws Exception {
        AtomicReference<T> answer = new AtomicReference<>();
        onEvents(() -> answer.set(question.get()));
        return answer.get();
    }

    private static void until(Supplier<Boolean> holds) throws Exception {
        while (!asked(holds)) {
            Thread.sleep(5);
        }
    }

    @Test
    void pinsAreShownBeforeTheStoreHasThemAndCountAsPinned() throws Exception {
        CountDownLatch free = slowStore();
        onEvents(() -> {
            model.select(new PhotoId(1));
            make(pin(1, HOOD));
            model.goOnAfter(List.of(new PhotoId(1)));
            make(pin(2, ROOF));
            model.goOnAfter(List.of(new PhotoId(2)));
        });
        assertThat(asked(() -> visit.visit().pins())).as("what the visit holds").isEmpty();
        assertThat(asked(() -> item(1).storing())).containsExactly(pin(1, HOOD));
        assertThat(asked(() -> item(1).isOpen())).isFalse();
        assertThat(asked(() -> model.counts().get(Showing.UNPINNED))).isEqualTo(PHOTOS - 2);
        assertThat(asked(() -> visit.selection().photo())).contains(new PhotoId(3));

        free.countDown();
        until(() -> visit.underWay().isEmpty());
        assertThat(asked(() -> item(1).isStoring())).isFalse();
        assertThat(asked(() -> item(1).allPins().toList())).containsExactly(pin(1, HOOD));
        assertThat(asked(() -> item(2).allPins().toList())).containsExactly(pin(2, ROOF));
        assertThat(told.get()).isNull();
    }

    @Test
    void undoTakesBackTheLastPinByNameThenTheOneBefore() throws Exception {
        CountDownLatch free = slowStore();
        onEvents(() -> {
            make(pin(1, HOOD));
            make(pin(2, ROOF));
            visit.undo();
        });
        free.countDown();
        until(() -> visit.redoLabel().isPresent());
        assertThat(asked(visit::redoLabel)).contains("add pin p2 to roof");
        assertThat(asked(visit::undoLabel)).contains("add pin p1 to hood");
        assertThat(asked(() -> item(2).isOpen())).isTrue();
        assertThat(asked(() -> item(1).isOpen())).isFalse();

        onEvents(visit::undo);
        until(() -> item(1).isOpen());
        onEvents(visit::redo);
        until(() -> !item(1).isOpen());
        assertThat(asked(visit::redoLabel)).contains("add pin p2 to roof");
    }

    @Test
    void aPinThatTheStoreRefusesIsGoneWhenTheSentenceIsToldAndOthersStay() throws Exception {
        CountDownLatch free = slowStore();
        AtomicReference<Boolean> openWhenTold = new AtomicReference<>();
        onEvents(() -> {
            make(pin(1, HOOD));
            visit.pin(
                    List.of(pin(2, HOOD)),
                    store -> {
                        throw new EditRefused("pin", "The visit does not take the pin.");
                    },
                    done -> {},
                    refusal -> {
                        told.set(refusal);
                        openWhenTold.set(item(2).isOpen());
                    });
            make(pin(3, ROOF));
        });
        assertThat(asked(() -> item(2).isPinned())).as("shown at first").isTrue();
        free.countDown();
        until(() -> visit.underWay().isEmpty());
        assertThat(told.get()).hasMessage("The visit does not take the pin.");
        assertThat(openWhenTold.get()).isTrue();
        assertThat(asked(() ->
                        visit.visit().pins().stream().map(row -> row.value()).toList()))
                .containsExactly(pin(1, HOOD), pin(3, ROOF));
        assertThat(asked(() -> item(2).isOpen())).isTrue();
    }
}
