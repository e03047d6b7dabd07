package quarterlight.ui.photos;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Toolkit;
import java.awt.event.KeyEvent;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JTextArea;
import org.assertj.swing.core.matcher.JButtonMatcher;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.finder.JOptionPaneFinder;
import org.assertj.swing.fixture.JOptionPaneFixture;
import org.assertj.swing.timing.Pause;
import org.junit.jupiter.api.Test;
import quarterlight.ui.DeskRobot;
import quarterlight.ui.diagram.DiagramPanel;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Pin;

/** Pins made faster than the store writes them, and pins that it does not take. */
class PinAtOnceRobotTest extends DeskRobot {
    private static final int BETWEEN_KEYS_MS = 30;

    private Component sheet() {
        return robot.finder().findByName("photos-sheet");
    }

    private List<Pin> pins() {
        return held().pins().stream().map(row -> row.value()).toList();
    }

    private int numbered() {
        DiagramPanel diagram = (DiagramPanel) robot.finder().findByName("diagram");
        return GuiActionRunner.execute(() -> diagram.pins().entries().size());
    }

    private void pinTheFirst() {
        robot.focusAndWaitForFocusGain(sheet());
        robot.pressAndReleaseKeys(KeyEvent.VK_HOME);
        robot.enterText("hood");
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        until("the first photo is pinned", () -> pins().size() == 1);
        until(
                "the next photo has a suggestion",
                () -> robot.finder()
                                .findAll(c -> "photos-row-1".equals(c.getName()) && c.isShowing() && c.isEnabled())
                                .size()
                        == 1);
        robot.focusAndWaitForFocusGain(sheet());
    }

    /** Keys come by the queue of the window, since the robot waits after each until the window is idle. */
    private void typedFast(int count) {
        Component sheet = sheet();
        for (int i = 0; i < count; i++) {
            Toolkit.getDefaultToolkit()
                    .getSystemEventQueue()
                    .postEvent(new KeyEvent(
                            sheet,
                            KeyEvent.KEY_TYPED,
                            CLOCK.millis() + BETWEEN_KEYS_MS * (long) i,
                            0,
                            KeyEvent.VK_UNDEFINED,
                            '1'));
            Pause.pause(BETWEEN_KEYS_MS);
        }
    }

    @Test
    void keysThirtyMillisecondsApartEachPinAPhotoAndAreUndoneOneByOne() {
        pinTheFirst();
        typedFast(6);
        until("all are stored", () -> pins().size() == 7);
        assertThat(pins().stream().map(Pin::photo).distinct()).hasSize(7);
        until("all are on the diagram", () -> numbered() == 7);
        for (int left = 6; left >= 4; left--) {
            int count = left;
            withControl(KeyEvent.VK_Z);
            until(count + " are left", () -> pins().size() == count);
        }
        assertThat(pins().stream().map(Pin::photo).distinct()).hasSize(4);
        until("the diagram follows", () -> numbered() == 4);
    }

    @Test
    void aPinThatTheStoreDoesNotTakeIsTakenBackWithASentence() throws Exception {
        pinTheFirst();
        change("CREATE TRIGGER refuse BEFORE INSERT ON pin BEGIN SELECT RAISE(ABORT, 'no pins today'); END");
        robot.type('1');
        JOptionPaneFixture dialog = JOptionPaneFinder.findOptionPane().using(robot);
        JTextArea sentence = robot.finder().findByType(dialog.target(), JTextArea.class);
        String told = GuiActionRunner.execute(() -> sentence.getText());
        assertThat(told).contains("no pins today");
        assertThat(numbered()).as("pins on the diagram").isEqualTo(1);
        assertThat(pins()).hasSize(1);
        JButton ok = robot.finder().find(dialog.target(), JButtonMatcher.any());
        robot.click(ok);

        change("DROP TRIGGER refuse");
        robot.focusAndWaitForFocusGain(sheet());
        robot.type('1');
        until("the next one is stored", () -> pins().size() == 2);
        until("and on the diagram", () -> numbered() == 2);
        assertThat(pins().get(1).photo()).isNotEqualTo(new PhotoId(2));
    }

    private void change(String sql) throws Exception {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + visit.resolve("visit.db"));
                Statement statement = connection.createStatement()) {
            statement.executeUpdate(sql);
        }
    }
}
