package quarterlight.ui.photos.list;

import static org.assertj.core.api.Assertions.assertThat;
import static quarterlight.ui.kit.OpenedVisit.asked;
import static quarterlight.ui.kit.OpenedVisit.until;

import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.car.ZoneId;
import quarterlight.edit.EditRefused;
import quarterlight.edit.row.RowEdits;
import quarterlight.store.SampleVisit;
import quarterlight.ui.kit.OpenedVisit;
import quarterlight.ui.kit.visit.OpenVisit;
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

    /** What an edit said that the store refused. */
    private final AtomicReference<Throwable> refused = new AtomicReference<>();

    private OpenedVisit opened;
    private OpenVisit visit;
    private PhotosModel model;

    @BeforeEach
    void open() throws Exception {
        opened = OpenedVisit.coupe(
                folder,
                store -> store.change("take in", tx -> {
                    for (int i = 1; i <= PHOTOS; i++) {
                        tx.addPhoto(SampleVisit.barePhoto(i));
                    }
                }));
        visit = opened.visit();
        onEvents(() -> model = new PhotosModel(visit));
    }

    @AfterEach
    void close() {
        opened.close();
    }

    private static Pin pin(long photo, ZoneId zone) {
        return VisitParts.pin(new PhotoId(photo), zone);
    }

    private void make(Pin pin) {
        visit.pin(
                List.of(pin),
                store -> new RowEdits(store).add(RecordKind.PINS, List.of(pin)),
                done -> {},
                refused::set);
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
        assertThat(asked(() -> model.counts().get(PhotoScope.UNPINNED))).isEqualTo(PHOTOS - 2);
        assertThat(asked(() -> visit.selection().photo())).contains(new PhotoId(3));

        free.countDown();
        until(() -> visit.underWay().isEmpty());
        assertThat(asked(() -> item(1).isStoring())).isFalse();
        assertThat(asked(() -> item(1).allPins().toList())).containsExactly(pin(1, HOOD));
        assertThat(asked(() -> item(2).allPins().toList())).containsExactly(pin(2, ROOF));
        assertThat(refused.get()).isNull();
        assertThat(opened.told()).isEmpty();
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
                        refused.set(refusal);
                        openWhenTold.set(item(2).isOpen());
                    });
            make(pin(3, ROOF));
        });
        assertThat(asked(() -> item(2).isPinned())).as("shown at first").isTrue();
        free.countDown();
        until(() -> visit.underWay().isEmpty());
        assertThat(refused.get()).hasMessage("The visit does not take the pin.");
        assertThat(openWhenTold.get()).isTrue();
        assertThat(asked(() ->
                        visit.visit().pins().stream().map(row -> row.value()).toList()))
                .containsExactly(pin(1, HOOD), pin(3, ROOF));
        assertThat(asked(() -> item(2).isOpen())).isTrue();
    }
}
