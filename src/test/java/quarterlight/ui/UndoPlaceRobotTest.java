package quarterlight.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import javax.swing.JTabbedPane;
import org.junit.jupiter.api.Test;

/** Undo goes where it acts: the station, the tab and the photo come back into sight. */
class UndoPlaceRobotTest extends DeskRobot {
    @Test
    void undoGoesToThePhotoThenToTheReadingThenToTheClaim() {
        withControl(KeyEvent.VK_5);
        robot.pressKey(KeyEvent.VK_ALT);
        robot.pressAndReleaseKeys(KeyEvent.VK_6);
        robot.releaseKey(KeyEvent.VK_ALT);
        robot.focusAndWaitForFocusGain(window.textBox("claim-text").target());
        robot.enterText("one owner");
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        until("the claim is held", () -> held().claims().size() == 1);

        withControl(KeyEvent.VK_2);
        withControl(KeyEvent.VK_ENTER);
        robot.focusAndWaitForFocusGain(window.textBox("gauge-entry").target());
        robot.enterText("4.2");
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        until("the reading is held", () -> held().readings().size() == 1);

        withControl(KeyEvent.VK_1);
        robot.focusAndWaitForFocusGain(robot.finder().findByName("photos-sheet"));
        robot.pressAndReleaseKeys(KeyEvent.VK_HOME);
        robot.enterText("hood");
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        until("the pin is held", () -> held().pins().size() == 1);

        withControl(KeyEvent.VK_4);
        until("Marks is in front", () -> isInFront("marks"));
        withControl(KeyEvent.VK_Z);
        until("the pin is gone and Photos is in front", () -> held().pins().isEmpty() && isInFront("photos-sheet"));
        withControl(KeyEvent.VK_Z);
        until(
                "the reading is gone and Gauge is in front",
                () -> held().readings().isEmpty() && isInFront("gauge-entry"));
        withControl(KeyEvent.VK_Z);
        until("the claim is gone and its tab is in front", () -> held().claims().isEmpty() && isInFront("claims"));
        JTabbedPane tabs = (JTabbedPane) robot.finder().findByName("notes-tabs");
        assertThat(tabs.getSelectedIndex()).isEqualTo(5);
    }

    private boolean isInFront(String name) {
        return !robot.finder()
                .findAll(c -> name.equals(c.getName()) && c.isShowing())
                .isEmpty();
    }
}
