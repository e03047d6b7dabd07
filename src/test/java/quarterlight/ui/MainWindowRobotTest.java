package quarterlight.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.DialogFixture;
import org.junit.jupiter.api.Test;

/** The frame of the window: facts, undo by name, stations by key, light and dark. */
class MainWindowRobotTest extends DeskRobot {
    @Test
    void factsAreChangedInTheFormAndTakenBackByKey() {
        press(KeyEvent.VK_I);
        DialogFixture form = WindowFinder.findDialog("visit-form").using(robot);
        form.textBox("inspector").setText("A. Tester");
        form.button(org.assertj.swing.core.matcher.JButtonMatcher.withText("Save"))
                .click();
        until("the fact is kept", () -> held().facts().inspector().isPresent());
        assertThat(held().facts().inspector()).contains("A. Tester");

        press(KeyEvent.VK_Z);
        until("the fact is taken back", () -> held().facts().inspector().isEmpty());
    }

    @Test
    void aWrongFactIsSaidInTheFormAndNothingIsChanged() {
        press(KeyEvent.VK_I);
        DialogFixture form = WindowFinder.findDialog("visit-form").using(robot);
        form.textBox("year").setText("soon");
        form.button(org.assertj.swing.core.matcher.JButtonMatcher.withText("Save"))
                .click();
        form.requireVisible();
        form.button(org.assertj.swing.core.matcher.JButtonMatcher.withText("Cancel"))
                .click();
        assertThat(held().facts().car().modelYear()).isEmpty();
    }

    @Test
    void everyStationComesByItsKey() {
        for (int digit = 6; digit >= 1; digit--) {
            int station = digit;
            press(KeyEvent.VK_0 + digit);
            until(
                    "station " + digit + " is in front",
                    () -> window.toggleButton("station-" + station).target().isSelected());
        }
    }

    private void press(int key) {
        withControl(key);
    }
}
