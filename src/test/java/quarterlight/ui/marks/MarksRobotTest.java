package quarterlight.ui.marks;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quarterlight.edit.fact.FactEdits;
import quarterlight.store.VisitStore;
import quarterlight.table.ZoneTable;
import quarterlight.ui.DeskRobot;
import quarterlight.visit.mark.Mark;

/** A stamp is read letter by letter: what it can mean stands there while it is typed, Enter keeps it, undo takes it back. */
class MarksRobotTest extends DeskRobot {
    @Override
    protected void make(Path path) throws Exception {
        super.make(path);
        try (VisitStore store = VisitStore.openForEditing(path, CLOCK)) {
            new FactEdits(ZoneTable.load()).set(store, Map.of("built", "1971-03"));
        }
    }

    private String said(String name) {
        return name.equals("mark-verdict")
                ? window.label(name).text()
                : window.textBox(name).text();
    }

    private void type(String field, String words) {
        robot.focusAndWaitForFocusGain(window.textBox("mark-" + field).target());
        robot.enterText(words);
    }

    @Test
    void aMarkIsReadWhileItIsTypedKeptByEnterAndTakenBack() {
        window.toggleButton("station-4").click();
        window.button("marks-begin").click();
        type("part", "Alternator");
        type("text", "3F14");
        until("the dates it can mean are there", () -> said("mark-dates").contains("Jun 14, 1973"));
        assertThat(said("mark-verdict")).isEqualTo("Too late");
        assertThat(held().marks()).as("nothing is kept before Enter").isEmpty();

        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        until("the mark is kept", () -> held().marks().size() == 1);
        Mark mark = held().marks().get(0).value();
        assertThat(mark.part()).isEqualTo("Alternator");
        assertThat(mark.text()).isEqualTo("3F14");

        type("text", "?");
        until("an unread letter makes it malformed", () -> said("mark-verdict").equals("Malformed"));
        robot.pressAndReleaseKeys(KeyEvent.VK_BACK_SPACE);
        until("and without it, as before", () -> said("mark-verdict").equals("Too late"));
        assertThat(held().marks().get(0).value().text()).isEqualTo("3F14");
    }

    @Test
    void aNumberThatDiffersIsSaidWithThePlaces() {
        window.toggleButton("station-4").click();
        window.button("marks-begin").click();
        type("part", "Body stamp");
        type("text", "H71C?A1");
        type("expected", "H71C2B1");
        until(
                "the differing place is named",
                () -> robot.finder()
                                .findAll(c -> c instanceof LetterMatch && c.isShowing())
                                .size()
                        == 1);
        LetterMatch match = robot.finder().findByType(LetterMatch.class, true);
        assertThat(match.getAccessibleContext().getAccessibleName())
                .contains("differs")
                .contains("place 6");
    }

    @Test
    void aMarkWithoutItsTextIsNotKept() {
        window.toggleButton("station-4").click();
        window.button("marks-begin").click();
        type("part", "Engine block");
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        assertThat(said("mark-why")).contains("Type the mark as you read it");
        assertThat(held().marks()).isEmpty();
    }
}
