package quarterlight.ui.photos;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.time.Duration;
import java.util.List;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.DialogFixture;
import org.junit.jupiter.api.Test;
import quarterlight.ui.DeskRobot;
import quarterlight.visit.annotation.NoteShape;
import quarterlight.visit.pin.Pin;

/** The evening after a visit: photos are selected, pinned, worded and set aside by keyboard and mouse. */
class PhotosRobotTest extends DeskRobot {
    private Component sheet() {
        return robot.finder().findByName("photos-sheet");
    }

    private void inSheet(int... keys) {
        robot.focusAndWaitForFocusGain(sheet());
        robot.pressAndReleaseKeys(keys);
    }

    private List<Pin> pins() {
        return held().pins().stream().map(row -> row.value()).toList();
    }

    @Test
    void typedZonesAndDigitsPinOnePhotoAfterAnother() {
        inSheet(KeyEvent.VK_HOME);
        robot.enterText("hood");
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        until("the first photo is pinned", () -> pins().size() == 1);
        assertThat(pins().get(0).zone().value()).isEqualTo("hood");
        until(
                "the next unpinned photo is in hand and has suggestions",
                () -> robot.finder()
                                .findAll(c -> "photos-row-1".equals(c.getName()) && c.isShowing() && c.isEnabled())
                                .size()
                        == 1);
        robot.type('1');
        until("the second photo is pinned by one key", () -> pins().size() == 2);
        assertThat(pins().get(1).photo()).isNotEqualTo(pins().get(0).photo());
    }

    @Test
    void severalPhotosArePinnedAtOnceAndTakenBackByOneUndo() {
        inSheet(KeyEvent.VK_HOME);
        robot.pressKey(KeyEvent.VK_SHIFT);
        robot.pressAndReleaseKeys(KeyEvent.VK_RIGHT, KeyEvent.VK_RIGHT);
        robot.releaseKey(KeyEvent.VK_SHIFT);
        robot.enterText("driver door");
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        until("three photos are pinned", () -> pins().size() == 3);
        assertThat(pins()).allMatch(pin -> pin.zone().value().equals("door-front-left"));
        withControl(KeyEvent.VK_Z);
        until("all three are taken back", () -> pins().isEmpty());
    }

    @Test
    void aClickOnTheDiagramPinsThePhotoInHandWhereItPoints() {
        inSheet(KeyEvent.VK_END);
        Component diagram = robot.finder().findByName("diagram");
        Point zone = new Point(diagram.getWidth() / 5, diagram.getHeight() / 8);
        until("a zone lies under the click", () -> {
            robot.click(diagram, zone, MouseButton.LEFT_BUTTON, 1);
            return !pins().isEmpty();
        });
        assertThat(pins().get(0).point()).isPresent();
    }

    @Test
    void aPhotoIsSetAsideWithAReasonAndTakenBack() {
        inSheet(KeyEvent.VK_HOME);
        robot.pressAndReleaseKeys(KeyEvent.VK_DELETE);
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        until(
                "one photo is set aside",
                () -> held().photos().stream()
                                .filter(photo -> photo.setAside().isPresent())
                                .count()
                        == 1);
        inSheet(KeyEvent.VK_HOME);
        robot.pressKey(KeyEvent.VK_SHIFT);
        robot.pressAndReleaseKeys(KeyEvent.VK_DELETE);
        robot.releaseKey(KeyEvent.VK_SHIFT);
        until("it is taken back", () -> held().photos().stream()
                .noneMatch(photo -> photo.setAside().isPresent()));
    }

    @Test
    void anArrowIsDrawnAboveThePhotoThenChosenAndRemoved() {
        inSheet(KeyEvent.VK_HOME);
        menuKey(KeyEvent.VK_D);
        robot.type('a');
        Component photo = robot.finder().findByName("photos-large");
        Point from = new Point(photo.getWidth() / 2 - 40, photo.getHeight() / 2);
        Point to = new Point(photo.getWidth() / 2 + 40, photo.getHeight() / 2 + 20);
        robot.pressMouse(photo, from);
        robot.moveMouse(photo, to);
        robot.releaseMouseButtons();
        until("an arrow is kept", () -> held().photoNotes().size() == 1);
        assertThat(held().photoNotes().get(0).value().shape()).isEqualTo(NoteShape.ARROW);

        robot.pressAndReleaseKeys(KeyEvent.VK_ESCAPE);
        menuKey(KeyEvent.VK_D);
        robot.click(photo, new Point((from.x + to.x) / 2, (from.y + to.y) / 2), MouseButton.LEFT_BUTTON, 1);
        robot.pressAndReleaseKeys(KeyEvent.VK_DELETE);
        until("the arrow is removed", () -> held().photoNotes().isEmpty());
        assertThat(held().photos()).allMatch(held -> held.setAside().isEmpty());
    }

    @Test
    void aCameraIsShiftedInTheClockPanel() {
        menuKey(KeyEvent.VK_L);
        DialogFixture clocks = WindowFinder.findDialog("clocks").using(robot);
        clocks.textBox("clock-shift").setText("-01:00:00");
        clocks.button("clock.by-shift.do").click();
        until("the clock is set", () -> held().clocks().size() == 1);
        assertThat(held().clocks().get(0).shift()).isEqualTo(Duration.ofHours(-1));
        clocks.close();
    }

    @Test
    void aShiftIsKeptByLeavingItsFieldAndTakenBackByEscape() {
        menuKey(KeyEvent.VK_L);
        DialogFixture clocks = WindowFinder.findDialog("clocks").using(robot);
        var shift = clocks.textBox("clock-shift");
        robot.focusAndWaitForFocusGain(shift.target());
        shift.selectAll();
        robot.enterText("1 hour");
        robot.pressAndReleaseKeys(KeyEvent.VK_TAB);
        until("the clock is set", () -> held().clocks().size() == 1);
        assertThat(held().clocks().get(0).shift()).isEqualTo(Duration.ofHours(1));
        until("it is said as a shift", () -> shift.text().contains("01:00:00"));

        robot.focusAndWaitForFocusGain(shift.target());
        shift.selectAll();
        robot.enterText("2 hours");
        robot.pressAndReleaseKeys(KeyEvent.VK_ESCAPE);
        until("what was typed is taken back", () -> shift.text().contains("01:00:00"));
        assertThat(clocks.target().isShowing()).isTrue();
        robot.pressAndReleaseKeys(KeyEvent.VK_TAB);
        robot.waitForIdle();
        assertThat(held().clocks().get(0).shift()).isEqualTo(Duration.ofHours(1));
        clocks.close();
    }

    private void menuKey(int key) {
        robot.focusAndWaitForFocusGain(sheet());
        robot.pressKey(KeyEvent.VK_CONTROL);
        robot.pressAndReleaseKeys(key);
        robot.releaseKey(KeyEvent.VK_CONTROL);
    }
}
