package quarterlight.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.AWTEvent;
import java.awt.Toolkit;
import java.awt.event.AWTEventListener;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import quarterlight.car.ZoneId;
import quarterlight.edit.row.RowEdits;
import quarterlight.store.VisitStore;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.row.RecordKind;

/**
 * The keys that a mark, a statement and a sign take in the real window, counted as they are pressed. A key held with Ctrl or Alt counts as one.
 * The table stands in docs/performance.md.
 */
class KeysRobotTest extends DeskRobot {
    private static final int STEPS = 12;
    private static final Set<Integer> HELD =
            Set.of(KeyEvent.VK_CONTROL, KeyEvent.VK_ALT, KeyEvent.VK_SHIFT, KeyEvent.VK_META);

    private final AtomicInteger keys = new AtomicInteger();
    private final AWTEventListener counter = event -> {
        if (event instanceof KeyEvent key && key.getID() == KeyEvent.KEY_PRESSED && !HELD.contains(key.getKeyCode())) {
            keys.incrementAndGet();
        }
    };

    @BeforeEach
    void count() {
        Toolkit.getDefaultToolkit().addAWTEventListener(counter, AWTEvent.KEY_EVENT_MASK);
    }

    @AfterEach
    void countNoMore() {
        Toolkit.getDefaultToolkit().removeAWTEventListener(counter);
    }

    @Override
    protected void make(Path path) throws Exception {
        super.make(path);
        try (VisitStore store = VisitStore.openForEditing(path, CLOCK)) {
            List<Photo> photos = store.read().photos();
            new RowEdits(store)
                    .add(
                            RecordKind.PINS,
                            Stream.of("hood", "firewall")
                                    .map(ZoneId::new)
                                    .map(zone -> new Pin(
                                            photos.get(zone.value().length()).id(),
                                            zone,
                                            OptionalDouble.empty(),
                                            Optional.empty(),
                                            Optional.empty(),
                                            Optional.empty(),
                                            Optional.empty()))
                                    .toList());
        }
    }

    private void withAlt(int key) {
        robot.pressKey(KeyEvent.VK_ALT);
        robot.pressAndReleaseKeys(key);
        robot.releaseKey(KeyEvent.VK_ALT);
    }

    private boolean hasFocus(String field) {
        return GuiActionRunner.execute(() -> window.textBox(field).target().isFocusOwner());
    }

    private void goTo(String station, String shown) {
        until("the station can be gone to", () -> isShown(station));
        window.toggleButton(station).click();
        until("the station stands there", () -> isShown(shown));
    }

    private boolean isShown(String name) {
        return !robot.finder()
                .findAll(c -> name.equals(c.getName()) && c.isShowing())
                .isEmpty();
    }

    private String zoneSaid() {
        return GuiActionRunner.execute(() ->
                window.textBox("note-zone").target().getAccessibleContext().getAccessibleDescription());
    }

    @Test
    void aMarkTakesAtMostTwelveKeysWithoutItsText() {
        goTo("station-4", "marks");
        keys.set(0);
        withControl(KeyEvent.VK_M);
        until("the part is asked for", () -> isShown("mark-part") && hasFocus("mark-part"));
        robot.enterText("alt");
        robot.pressAndReleaseKeys(KeyEvent.VK_DOWN);
        until("the part is taken", () -> window.textBox("mark-part").text().equals("Alternator"));
        robot.pressAndReleaseKeys(KeyEvent.VK_TAB);
        robot.enterText("c");
        robot.pressAndReleaseKeys(KeyEvent.VK_TAB);
        until("the text is asked for", () -> hasFocus("mark-text"));
        String text = "165K3";
        robot.enterText(text);
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        until("the mark is kept", () -> held().marks().size() == 1);
        assertThat(held().marks().get(0).value().part()).isEqualTo("Alternator");
        assertThat(held().marks().get(0).value().kind().word()).isEqualTo("casting");
        assertThat(keys.get() - text.length()).as("keys of a mark").isBetween(5, 12);
    }

    @Test
    void aStatementOfThePhotoInHandTakesAtMostFourKeysWithoutItsText() {
        goTo("station-5", "note-text");
        robot.focusAndWaitForFocusGain(window.textBox("note-text").target());
        int before = held().statements().size();
        keys.set(0);
        // the photos of the visit are gone through; the one that is pinned says of which zone the words are
        for (int step = 0; step < STEPS && !zoneSaid().contains("Hood"); step++) {
            keys.set(0);
            withAlt(KeyEvent.VK_PAGE_DOWN);
            robot.waitForIdle();
        }
        String words = "Stone chips along the edge";
        robot.enterText("/w");
        robot.enterText(words);
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        until("the statement is kept", () -> held().statements().size() == before + 1);
        assertThat(held().statements().get(before).value().zone()).isEqualTo(new ZoneId("hood"));
        assertThat(keys.get() - words.length()).as("keys of a statement").isBetween(3, 4);
    }
}
