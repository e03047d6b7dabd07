package quarterlight.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.AWTEvent;
import java.awt.Component;
import java.awt.Toolkit;
import java.awt.event.AWTEventListener;
import java.awt.event.KeyEvent;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.timing.Pause;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.TestReporter;
import quarterlight.car.ZoneId;
import quarterlight.table.ZoneTable;
import quarterlight.ui.kit.view.PhotoCanvas;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;

/**
 * A trained hand at the real window, whose keys are counted as they are pressed: a key held with Ctrl, Alt or Shift counts as one. It knows where
 * each photo was taken, takes a suggestion by its digit where the list has it, and else types initials until the finder has it. Keys that repeat
 * by themselves would be counted: {@code xset r off} on a display that other work keeps busy.
 */
abstract class EveningRobot extends DeskRobot {
    private static final Set<Integer> HELD =
            Set.of(KeyEvent.VK_CONTROL, KeyEvent.VK_ALT, KeyEvent.VK_SHIFT, KeyEvent.VK_META);
    private static final int ROWS = 9;
    /** Longer than the suggestions after a pin take. */
    private static final int LOOK_MS = 250;

    private final AtomicInteger keys = new AtomicInteger();
    private final AWTEventListener counter = event -> {
        if (event instanceof KeyEvent key && key.getID() == KeyEvent.KEY_PRESSED && !HELD.contains(key.getKeyCode())) {
            keys.incrementAndGet();
        }
    };
    private TestReporter reporter;

    @BeforeEach
    void count(TestReporter told) {
        reporter = told;
        robot.settings().delayBetweenEvents(5);
        Toolkit.getDefaultToolkit().addAWTEventListener(counter, AWTEvent.KEY_EVENT_MASK);
    }

    @AfterEach
    void countNoMore() {
        Toolkit.getDefaultToolkit().removeAWTEventListener(counter);
    }

    /** Keys pressed since the count began. */
    final int keys() {
        return keys.get();
    }

    final void begin() {
        robot.waitForIdle();
        keys.set(0);
    }

    /** Tells how many keys so many things took; the line of the table in docs/performance.md. */
    final double told(String what, int things, int pressed) {
        double each = (double) pressed / things;
        reporter.publishEntry(what, "%d, %d keys, %.2f each".formatted(things, pressed, each));
        return each;
    }

    final void press(int key, int... held) {
        for (int one : held) {
            robot.pressKey(one);
        }
        robot.pressAndReleaseKeys(key);
        for (int one : held) {
            robot.releaseKey(one);
        }
    }

    /** Letters, digits and the point, each by its own key. */
    final void type(String text) {
        text.toUpperCase(Locale.ROOT)
                .chars()
                .forEach(c -> robot.pressAndReleaseKeys(c == '.' ? KeyEvent.VK_PERIOD : c));
    }

    final boolean isShown(String name) {
        return !robot.finder()
                .findAll(c -> name.equals(c.getName()) && c.isShowing())
                .isEmpty();
    }

    final Component named(String name) {
        return robot.finder().findByName(name, true);
    }

    /** The photo that the station shows large. */
    final Optional<Photo> inHand() {
        PhotoCanvas large = (PhotoCanvas) named("photos-large");
        return GuiActionRunner.execute(large::photo);
    }

    /**
     * Pins every photo that has a place from the first to the last.
     *
     * @return keys a photo
     */
    final double pinAll(Map<PhotoId, ZoneId> places) {
        Component sheet = named("photos-sheet");
        robot.focusAndWaitForFocusGain(sheet);
        begin();
        press(KeyEvent.VK_HOME);
        Set<PhotoId> done = new HashSet<>();
        int digits = 0;
        while (done.size() < places.size()) {
            until(
                    "an open photo is in hand",
                    () -> inHand().isPresent() && !done.contains(inHand().get().id()));
            PhotoId photo = inHand().orElseThrow().id();
            if (!places.containsKey(photo)) {
                press(KeyEvent.VK_RIGHT);
                continue;
            }
            digits += pin(places.get(photo));
            done.add(photo);
        }
        until("all are pinned", () -> held().pins().size() >= places.size());
        double each = told("photo", places.size(), keys());
        reporter.publishEntry("photos by one digit", digits + " of " + places.size());
        Map<PhotoId, ZoneId> pinned = held().pins().stream()
                .collect(Collectors.toMap(
                        row -> row.value().photo(), row -> row.value().zone(), (a, b) -> a));
        assertThat(pinned).as("each where it was taken").isEqualTo(places);
        return each;
    }

    /** @return 1 if a suggestion had it */
    private int pin(ZoneId zone) {
        // the list stands still before a hand takes from it
        for (String before = ""; !before.equals(offered()); ) {
            before = offered();
            Pause.pause(LOOK_MS);
        }
        int row = rowOf(zone);
        if (row > 0) {
            press(KeyEvent.VK_0 + row);
            return 1;
        }
        String initials = zone.value().replaceAll("([a-z])[a-z]*-?", "$1");
        String letters = initials.length() > 1 ? initials : zone.value();
        for (int i = 0; i < letters.length() && row == 0; i++) {
            type(letters.substring(i, i + 1));
            robot.waitForIdle();
            row = rowOf(zone);
        }
        assertThat(row).as(zone + " is found by " + letters).isPositive();
        press(KeyEvent.VK_0 + row);
        return 0;
    }

    /** What the nine rows say, one below the other. */
    private String offered() {
        robot.waitForIdle();
        return GuiActionRunner.execute(
                () -> robot
                        .finder()
                        .findAll(c -> c.getName() != null && c.getName().startsWith("photos-row-") && c.isShowing())
                        .stream()
                        .map(c -> c.getAccessibleContext().getAccessibleName())
                        .sorted()
                        .collect(Collectors.joining("\n")));
    }

    /** Which of the nine rows offers a zone, from 1; 0 if none does. */
    private int rowOf(ZoneId zone) {
        String label = ZoneTable.load().get(zone).label();
        return GuiActionRunner.execute(() -> {
            for (int row = 1; row <= ROWS; row++) {
                String name = "photos-row-" + row;
                String said = robot.finder()
                        .find(c -> name.equals(c.getName()))
                        .getAccessibleContext()
                        .getAccessibleName();
                if (said.equals(row + " " + label) || said.startsWith(row + " " + label + ", ")) {
                    return row;
                }
            }
            return 0;
        });
    }
}
