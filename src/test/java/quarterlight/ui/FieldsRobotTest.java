package quarterlight.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.swing.JTabbedPane;
import javax.swing.text.JTextComponent;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import quarterlight.ui.kit.visit.Station;

/** In every field of every station, leaving keeps what was typed and Escape takes it back. */
class FieldsRobotTest extends DeskRobot {
    /** Fields that are found; fewer would show that the robot went past some. */
    private static final int MIN_FIELDS = 30;

    /** What suits a field whose name begins so; the others take any word. */
    private static final Map<String, String> WORDS = Map.of(
            "zone-field", "hood",
            "note-zone", "hood",
            "not-zone", "hood",
            "claim-zone", "hood",
            "photos-finder", "hood",
            "Spinner.formattedTextField", "3",
            "gauge-entry", "4.5");

    private final Set<Component> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    private final List<String> faults = new ArrayList<>();

    @Test
    void everyFieldKeepsWhatIsTypedAndGivesItBackByEscape() {
        for (Station station : Station.values()) {
            withControl(KeyEvent.VK_0 + station.digit());
            robot.waitForIdle();
            if (station == Station.GAUGE) {
                withControl(KeyEvent.VK_ENTER);
            }
            if (station == Station.RUST) {
                outline();
            }
            tryTabs(0);
        }
        assertThat(faults).isEmpty();
        assertThat(seen).hasSizeGreaterThanOrEqualTo(MIN_FIELDS);
    }

    /** The fields of an outline are free once one is drawn. */
    private void outline() {
        robot.type('a');
        Component photo = robot.finder().findByName("rust-photo");
        for (Point corner : List.of(new Point(-30, -20), new Point(30, -20), new Point(0, 30))) {
            Point at = new Point(photo.getWidth() / 2 + corner.x, photo.getHeight() / 2 + corner.y);
            robot.click(photo, at, MouseButton.LEFT_BUTTON, 1);
        }
        robot.type('c');
        robot.waitForIdle();
    }

    /** Goes through the tabs that show, and the tabs within them. */
    private void tryTabs(int depth) {
        List<JTabbedPane> tabs = robot.finder().findAll(c -> c instanceof JTabbedPane && c.isShowing()).stream()
                .map(JTabbedPane.class::cast)
                .toList();
        if (tabs.size() <= depth) {
            tryFields();
            return;
        }
        JTabbedPane pane = tabs.get(depth);
        for (int i = 0; i < pane.getTabCount(); i++) {
            int at = i;
            GuiActionRunner.execute(() -> pane.setSelectedIndex(at));
            robot.waitForIdle();
            tryTabs(depth + 1);
        }
    }

    private void tryFields() {
        List<JTextComponent> fields = robot
                .finder()
                .findAll(c -> c instanceof JTextComponent text
                        && c.isShowing()
                        && c.isEnabled()
                        && c.isFocusable()
                        && text.isEditable()
                        && !seen.contains(c))
                .stream()
                .map(JTextComponent.class::cast)
                .toList();
        for (JTextComponent field : fields) {
            seen.add(field);
            if (field.isShowing() && field.isEnabled()) {
                tryField(field);
            }
        }
    }

    private void tryField(JTextComponent field) {
        GuiActionRunner.execute(() -> field.scrollRectToVisible(new java.awt.Rectangle(0, 0, 10, 10)));
        String words = WORDS.getOrDefault(String.valueOf(field.getName()), "1971");
        String stood = field.getText();
        type(field, words);
        robot.pressAndReleaseKeys(KeyEvent.VK_ESCAPE);
        robot.waitForIdle();
        if (!field.getText().equals(stood)) {
            faults.add(named(field) + ": Escape leaves \"" + field.getText() + "\" where \"" + stood + "\" stood");
        }
        boolean picks = words.equals("hood");
        int pins = held().pins().size();
        type(field, words);
        robot.pressAndReleaseKeys(KeyEvent.VK_TAB);
        robot.waitForIdle();
        if (picks) {
            until(
                    "the zone is taken in " + named(field),
                    () -> field.getText().isEmpty()
                            && (said(field).contains("Hood") || held().pins().size() > pins));
            robot.pressAndReleaseKeys(KeyEvent.VK_ESCAPE);
        } else if (!field.getText().strip().equals(words) && !isTaken(field)) {
            faults.add(named(field) + ": leaving makes \"" + words + "\" into \"" + field.getText() + "\"");
        }
        GuiActionRunner.execute(() -> field.setText(stood));
    }

    private static String said(JTextComponent field) {
        return String.valueOf(field.getAccessibleContext().getAccessibleDescription());
    }

    /** A value that was taken into the visit leaves its field free for the next one. */
    private boolean isTaken(JTextComponent field) {
        return "gauge-entry".equals(field.getName())
                && field.getText().isEmpty()
                && !held().readings().isEmpty();
    }

    private void type(JTextComponent field, String words) {
        robot.focusAndWaitForFocusGain(field);
        GuiActionRunner.execute(field::selectAll);
        robot.enterText(words);
        robot.waitForIdle();
    }

    private static String named(JTextComponent field) {
        return field.getName() + " (" + field.getAccessibleContext().getAccessibleName() + ")";
    }
}
