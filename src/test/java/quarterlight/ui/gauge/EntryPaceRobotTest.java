package quarterlight.ui.gauge;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.AWTEvent;
import java.awt.Component;
import java.awt.Point;
import java.awt.Toolkit;
import java.awt.event.AWTEventListener;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import org.assertj.swing.core.MouseButton;
import org.junit.jupiter.api.Test;
import quarterlight.ui.DeskRobot;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.reading.Reading;

/** The pace of a gauge that types: no key but the values and one after each; points are clicked, near ones make a spot. */
class EntryPaceRobotTest extends DeskRobot {
    private static final int ZONES = 20;
    private static final int AT_EACH = 6;

    private List<Reading> readings() {
        return held().readings().stream().map(Recorded::value).toList();
    }

    @Test
    void aHundredAndTwentyReadingsTakeTheirOwnKeysAndOneForEachZone() {
        withControl(KeyEvent.VK_2);
        robot.focusAndWaitForFocusGain(window.textBox("gauge-entry").target());
        robot.settings().delayBetweenEvents(0);
        AtomicInteger pressed = new AtomicInteger();
        AWTEventListener counter = event -> {
            if (event.getID() == KeyEvent.KEY_PRESSED) {
                pressed.incrementAndGet();
            }
        };
        Toolkit.getDefaultToolkit().addAWTEventListener(counter, AWTEvent.KEY_EVENT_MASK);
        List<String> values = new ArrayList<>();
        Random random = new Random(11);
        try {
            robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
            for (int zone = 0; zone < ZONES; zone++) {
                for (int i = 0; i < AT_EACH; i++) {
                    String value = String.format(Locale.ROOT, "%d.%d", 3 + random.nextInt(6), random.nextInt(10));
                    values.add(value);
                    value.chars().forEach(c -> robot.pressAndReleaseKeys(c == '.' ? KeyEvent.VK_PERIOD : c));
                    robot.pressAndReleaseKeys(i < AT_EACH - 1 ? KeyEvent.VK_ENTER : KeyEvent.VK_DOWN);
                }
            }
            until("all readings are kept", () -> held().readings().size() == ZONES * AT_EACH);
        } finally {
            Toolkit.getDefaultToolkit().removeAWTEventListener(counter);
        }
        int needed = values.stream().mapToInt(value -> value.length() + 1).sum() + 1;
        assertThat(pressed.get()).isEqualTo(needed);
        List<Reading> kept = readings();
        assertThat(kept.stream()
                        .map(reading ->
                                ((GaugeValue.Measured) reading.value()).typed().toPlainString()))
                .containsExactlyElementsOf(values);
        for (int i = 0; i < kept.size(); i++) {
            boolean sameAsBefore =
                    i > 0 && kept.get(i).zone().equals(kept.get(i - 1).zone());
            assertThat(sameAsBefore).as("reading %d", i).isEqualTo(i % AT_EACH != 0);
        }
        assertThat(kept.stream().map(Reading::zone).distinct()).hasSize(ZONES);
    }

    @Test
    void aClickedPointTakesTheNextValueAndNearPointsMakeASpot() {
        withControl(KeyEvent.VK_2);
        Component diagram = robot.finder().findByName("diagram");
        Point place = new Point(diagram.getWidth() / 5, diagram.getHeight() / 8);
        click(diagram, place);
        until(
                "a zone lies under the click",
                () -> window.textBox("gauge-entry").target().isFocusOwner());
        type("5.1", 1);
        click(diagram, place);
        type("5.3", 2);
        type("5.5", 3);
        click(diagram, new Point(place.x + diagram.getWidth() / 20, place.y));
        type("6.0", 4);
        List<Reading> kept = readings();
        assertThat(kept.get(0).point()).isPresent().isEqualTo(kept.get(1).point());
        assertThat(kept.get(0).spot()).isPresent().isEqualTo(kept.get(1).spot());
        assertThat(kept.get(2).point()).as("no click before it").isEmpty();
        assertThat(kept.get(3).point()).isPresent();
        assertThat(kept.get(3).spot()).as("far from the first").isEqualTo(Optional.empty());
        withControl(KeyEvent.VK_Z);
        withControl(KeyEvent.VK_Z);
        withControl(KeyEvent.VK_Z);
        until("three are taken back", () -> held().readings().size() == 1);
        assertThat(readings().get(0).spot())
                .as("the label that the second brought is gone with it")
                .isEmpty();
    }

    private void click(Component diagram, Point place) {
        robot.click(diagram, place, MouseButton.LEFT_BUTTON, 1);
        robot.waitForIdle();
    }

    private void type(String value, int kept) {
        window.textBox("gauge-entry").enterText(value).pressAndReleaseKeys(KeyEvent.VK_ENTER);
        until(kept + " are kept", () -> held().readings().size() == kept);
    }
}
