package quarterlight.ui.photos;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;
import org.assertj.swing.core.MouseButton;
import org.junit.jupiter.api.Test;
import quarterlight.ui.DeskRobot;
import quarterlight.visit.pin.Pin;

/** A second pin, what a pin shows and its caption without leaving the keys; and nothing typed is lost by leaving. */
class PinWordsRobotTest extends DeskRobot {
    private Component sheet() {
        return robot.finder().findByName("photos-sheet");
    }

    private List<Pin> pins() {
        return held().pins().stream().map(row -> row.value()).toList();
    }

    private static Component focus() {
        return KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    }

    private void begin() {
        robot.focusAndWaitForFocusGain(sheet());
        robot.pressAndReleaseKeys(KeyEvent.VK_HOME);
    }

    private void with(int key, int modifier) {
        robot.pressKey(modifier);
        robot.pressAndReleaseKeys(key);
        robot.releaseKey(modifier);
    }

    private void untilWriting() {
        until(
                "the keyboard is in a cell of the pins",
                () -> focus() instanceof JTextComponent text
                        && javax.swing.SwingUtilities.getAncestorOfClass(JTable.class, text) != null);
        robot.waitForIdle();
    }

    @Test
    void twoPinsWhatTheyShowAndACaptionAreKeysAlone() {
        begin();
        robot.enterText("hood");
        with(KeyEvent.VK_ENTER, KeyEvent.VK_SHIFT);
        until("the first pin is held", () -> pins().size() == 1);
        robot.enterText("roof");
        robot.pressAndReleaseKeys(KeyEvent.VK_TAB);
        until("the second pin is held", () -> pins().size() == 2);
        untilWriting();
        robot.enterText("overview");
        robot.pressAndReleaseKeys(KeyEvent.VK_TAB);
        until("what it shows is held", () -> pins().get(1).shows().equals(Optional.of("overview")));
        untilWriting();
        robot.enterText("From the ladder");
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        until("the caption is held", () -> pins().get(1).caption().equals(Optional.of("From the ladder")));
        assertThat(pins().get(0).photo()).isEqualTo(pins().get(1).photo());
        until("the sheet has the keyboard", () -> focus() == sheet());
        robot.enterText("hood");
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        until("the next photo is pinned", () -> pins().size() == 3);
        assertThat(pins().get(2).photo()).isNotEqualTo(pins().get(0).photo());
    }

    @Test
    void aCaptionIsKeptWhenAnotherPhotoIsClicked() {
        begin();
        robot.enterText("hood");
        with(KeyEvent.VK_ENTER, KeyEvent.VK_SHIFT);
        until("the pin is held", () -> pins().size() == 1);
        robot.pressAndReleaseKeys(KeyEvent.VK_ESCAPE);
        until("the sheet has the keyboard", () -> focus() == sheet());
        robot.pressAndReleaseKeys(KeyEvent.VK_F2);
        untilWriting();
        robot.pressAndReleaseKeys(KeyEvent.VK_TAB);
        untilWriting();
        robot.enterText("Edge of the scoop");
        robot.click(sheet(), new Point(220, 120), MouseButton.LEFT_BUTTON, 1);
        until("the caption is held", () -> pins().get(0).caption().equals(Optional.of("Edge of the scoop")));
    }

    @Test
    void escapeTakesBackACaption() {
        begin();
        robot.enterText("hood");
        robot.pressAndReleaseKeys(KeyEvent.VK_TAB);
        until("the pin is held", () -> pins().size() == 1);
        untilWriting();
        robot.enterText("over");
        robot.pressAndReleaseKeys(KeyEvent.VK_ESCAPE);
        until("the sheet has the keyboard", () -> focus() == sheet());
        assertThat(pins().get(0).shows()).isEmpty();
    }
}
