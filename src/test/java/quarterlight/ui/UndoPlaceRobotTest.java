package quarterlight.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import javax.swing.JFrame;
import javax.swing.JMenuBar;
import javax.swing.JTabbedPane;
import org.assertj.swing.edt.GuiActionRunner;
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
        until("undo names it", () -> undo().equals("Undo: add claim \"one owner\""));

        withControl(KeyEvent.VK_2);
        withControl(KeyEvent.VK_ENTER);
        robot.focusAndWaitForFocusGain(window.textBox("gauge-entry").target());
        robot.enterText("4.2");
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        until("the reading is held", () -> held().readings().size() == 1);
        until("undo names it", () -> undo().startsWith("Undo: add reading 4.2 mil on "));

        withControl(KeyEvent.VK_1);
        robot.focusAndWaitForFocusGain(robot.finder().findByName("photos-sheet"));
        robot.pressAndReleaseKeys(KeyEvent.VK_HOME);
        robot.enterText("hood");
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        until("the pin is held", () -> held().pins().size() == 1);
        until("undo names it", () -> undo().equals("Undo: add pin IMG_100.JPG to hood"));

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

    /** What the first line of the Edit menu says. */
    private String undo() {
        return GuiActionRunner.execute(() -> {
            JMenuBar bar = ((JFrame) window.target()).getJMenuBar();
            return bar.getMenu(1).getItem(0).getText();
        });
    }

    private boolean isInFront(String name) {
        return !robot.finder()
                .findAll(c -> name.equals(c.getName()) && c.isShowing())
                .isEmpty();
    }
}
