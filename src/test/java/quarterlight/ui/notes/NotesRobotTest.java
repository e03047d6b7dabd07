package quarterlight.ui.notes;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JTable;
import org.junit.jupiter.api.Test;
import quarterlight.ui.DeskRobot;
import quarterlight.ui.kit.view.PhotoCanvas;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.Statement;
import quarterlight.visit.trial.TrialResult;

/** Notes by keyboard: zones by a few letters, a sentence, Enter; trials by one letter; wishes of coverage. */
class NotesRobotTest extends DeskRobot {
    private void station() {
        window.toggleButton("station-5").click();
    }

    private void type(String field, String words) {
        robot.focusAndWaitForFocusGain(window.textBox(field).target());
        robot.enterText(words);
    }

    private void tab(int key) {
        robot.focusAndWaitForFocusGain(robot.finder().findByName("diagram"));
        robot.pressKey(KeyEvent.VK_ALT);
        robot.pressAndReleaseKeys(key);
        robot.releaseKey(KeyEvent.VK_ALT);
    }

    private JTable table(String name) {
        Component found = robot.finder().findByName(name, true);
        return (JTable) found;
    }

    private List<Statement> statements() {
        return held().statements().stream().map(row -> row.value()).toList();
    }

    @Test
    void oneSentenceIsSaidOfTwoZonesAndOfferedAgain() {
        station();
        type("note-zone", "hood");
        robot.pressKey(KeyEvent.VK_SHIFT);
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        robot.releaseKey(KeyEvent.VK_SHIFT);
        type("note-zone", "decklid");
        robot.pressKey(KeyEvent.VK_SHIFT);
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        robot.releaseKey(KeyEvent.VK_SHIFT);
        type("note-text", "gap wider at the front /d");
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        until("both statements are there", () -> statements().size() == 2);
        assertThat(statements()).extracting(one -> one.zone().value()).containsExactlyInAnyOrder("hood", "decklid");
        assertThat(statements()).allMatch(one -> one.text().equals("gap wider at the front"));
        assertThat(statements()).allMatch(one -> one.what().equals(Facets.of(Condition.DAMAGED)));

        type("note-text", "wid");
        robot.pressAndReleaseKeys(KeyEvent.VK_DOWN, KeyEvent.VK_ENTER);
        until(
                "the sentence is offered",
                () -> window.textBox("note-text").text().equals("gap wider at the front"));
    }

    private void enter() {
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        robot.waitForIdle();
    }

    private String suggested() {
        return ((javax.swing.JLabel) robot.finder().findByName("facets-suggested", true)).getText();
    }

    @Test
    void whatTheWordsSuggestStandsReadyAndIsKeptOnlyWhenChosen() {
        station();
        type("note-zone", "hood");
        enter();
        type("note-text", "no sign of work");
        until("nothing is suggested", () -> suggested().startsWith("Say what it is"));
        enter();
        assertThat(statements()).as("nothing is kept unseen").isEmpty();
        window.textBox("note-text").setText("Filler over the lower third");
        until("filler stands ready", () -> suggested().contains("filler (/F)"));
        robot.focusAndWaitForFocusGain(window.textBox("note-text").target());
        enter();
        assertThat(statements()).as("nothing is kept unseen").isEmpty();
        until(
                "the board has the keyboard",
                () -> robot.finder().findByName("facets", true).isFocusOwner());
        robot.pressAndReleaseKeys(KeyEvent.VK_F);
        until(
                "the sentence has it again",
                () -> window.textBox("note-text").target().isFocusOwner());
        enter();
        until("it is kept", () -> statements().size() == 1);
        assertThat(statements().get(0).what()).isEqualTo(Facets.of(Condition.FILLER));
        assertThat(statements().get(0).text()).isEqualTo("Filler over the lower third");
    }

    @Test
    void detailsAreKeptAndAStatementIsTakenBackInSight() {
        station();
        type("note-zone", "radiator");
        enter();
        type("note-part", "upper hose");
        type("note-size", "4 in");
        window.comboBox("note-certainty").selectItem("guess");
        window.comboBox("note-said-by").selectItem("seller");
        window.checkBox("note-private").click();
        type("note-text", "cut 1/4 in. deep /l");
        enter();
        until("it is kept", () -> statements().size() == 1);
        Statement first = statements().get(0);
        assertThat(first.text()).isEqualTo("cut 1/4 in. deep");
        assertThat(first.is(Condition.LEAKING)).isTrue();
        assertThat(first.details().part()).contains("upper hose");
        assertThat(first.details().size().orElseThrow().said()).isEqualTo("4 in");
        assertThat(first.details().certainty()).contains(quarterlight.visit.statement.Certainty.GUESS);
        assertThat(first.details().saidBy()).isEqualTo(quarterlight.visit.statement.SaidBy.SELLER);
        assertThat(first.details().confidential()).isTrue();

        until("it is listed", () -> table("statements").getRowCount() == 1);
        robot.focusAndWaitForFocusGain(table("statements"));
        robot.pressAndReleaseKeys(KeyEvent.VK_HOME, KeyEvent.VK_DOWN, KeyEvent.VK_W);
        until(
                "the sentence is wanted",
                () -> window.textBox("note-text").target().isFocusOwner());
        robot.enterText("dry when wiped /s");
        enter();
        until("both are kept", () -> statements().size() == 2);
        assertThat(statements().get(1).details().withdraws())
                .contains(held().statements().get(0).id());
        assertThat(statements().get(1).details().confidential()).isFalse();
        assertThat(held().standing()).containsExactly(statements().get(1));
        until(
                "the first stays in sight",
                () -> String.valueOf(table("statements").getValueAt(0, 1)).equals("withdrawn: leaking"));
    }

    @Test
    void whatWasNotLookedAtIsSaidWithItsReason() {
        station();
        tab(KeyEvent.VK_2);
        type("not-zone", "trunk floor");
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        type("not-text", "mat glued down");
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        until("it is kept", () -> statements().size() == 1);
        assertThat(statements().get(0).what()).isEqualTo(Facets.of(Condition.NOT_LOOKED_AT));
        assertThat(statements().get(0).zone().value()).isEqualTo("trunk-floor");
    }

    @Test
    void aLetterSaysTheResultOfATrial() {
        station();
        tab(KeyEvent.VK_3);
        until("the usual list is there", () -> table("trials").getRowCount() > 20);
        int all = table("trials").getRowCount();
        robot.focusAndWaitForFocusGain(table("trials"));
        robot.pressAndReleaseKeys(KeyEvent.VK_HOME, KeyEvent.VK_DOWN, KeyEvent.VK_DOWN, KeyEvent.VK_F);
        until("the trial is kept", () -> held().trials().size() == 1);
        assertThat(held().trials().get(0).value().result()).isEqualTo(TrialResult.WORKS_WITH_A_FAULT);

        window.checkBox("trials-runs").click();
        until("what needs a running car is folded away", () -> table("trials").getRowCount() < all - 5);
    }

    @Test
    void oneStatementIsShownByTwoPhotosInHand() {
        station();
        List<quarterlight.visit.photo.PhotoId> photos = held().photos().stream()
                .map(quarterlight.visit.photo.Photo::id)
                .limit(2)
                .toList();
        window.toggleButton("station-1").click();
        robot.waitForIdle();
        JComponent sheet = (JComponent) robot.finder().findByName("photos-sheet", true);
        robot.focusAndWaitForFocusGain(sheet);
        robot.pressAndReleaseKeys(KeyEvent.VK_HOME);
        robot.pressKey(KeyEvent.VK_SHIFT);
        robot.pressAndReleaseKeys(KeyEvent.VK_RIGHT);
        robot.releaseKey(KeyEvent.VK_SHIFT);
        station();
        tab(KeyEvent.VK_1);
        window.checkBox("note-photos").requireText("2 selected photos").click();
        type("note-zone", "hood");
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        type("note-text", "dented from both sides /d");
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        until("it is kept", () -> statements().size() == 1);
        assertThat(statements().get(0).photos()).containsExactlyInAnyOrderElementsOf(photos);
    }

    @Test
    void aListOfOnesOwnIsKeptCheckedAndGivenUp() throws Exception {
        station();
        tab(KeyEvent.VK_5);
        until("gaps are listed", () -> table("gaps").getRowCount() > 20);
        int usual = table("gaps").getRowCount();
        window.button("coverage-list").click();
        var dialog = org.assertj.swing.finder.WindowFinder.findDialog("user-list")
                .withTimeout(20_000)
                .using(robot);
        var rows = dialog.table("list-rows");
        rows.cell(org.assertj.swing.data.TableCell.row(0).column(3)).enterValue("hod");
        dialog.button("list-keep").click();
        until("the row is refused", () -> dialog.textBox("list-said").text().contains("the nearest is hood"));
        rows.cell(org.assertj.swing.data.TableCell.row(0).column(3)).enterValue("hood");
        dialog.button("list-keep").click();
        java.nio.file.Path own = folder.resolve("settings/coverage.csv");
        until("the list is kept", () -> java.nio.file.Files.exists(own));
        assertThat(own).content().contains("photo,1,", ",hood,");
        until("fewer photos are asked for", () -> table("gaps").getRowCount() < usual - 20);

        window.button("coverage-list").click();
        org.assertj.swing.finder.WindowFinder.findDialog("user-list")
                .withTimeout(20_000)
                .using(robot)
                .button("list-back")
                .click();
        until("the program's list holds again", () -> table("gaps").getRowCount() == usual);
        assertThat(own).doesNotExist();
    }

    @Test
    void aClaimIsLaidAgainstFiguresOfTheOdometerAndDecidedByALetter() {
        station();
        tab(KeyEvent.VK_4);
        type("figure-figure", "61,240");
        type("figure-date", "2019-05");
        enter();
        until("the first figure is kept", () -> held().odometer().size() == 1);
        type("figure-figure", "41300");
        type("figure-date", "2024");
        window.checkBox("figure-round").click();
        type("figure-note", "");
        window.button("figure-keep").click();
        until("the second figure is kept", () -> held().odometer().size() == 2);
        assertThat(held().odometer().get(0).value().figure()).isEqualByComparingTo("61240");
        assertThat(held().odometer().get(0).value().wentRound()).isFalse();
        assertThat(held().odometer().get(1).value().wentRound()).isTrue();

        tab(KeyEvent.VK_6);
        window.comboBox("claim-about").selectItem("mileage");
        type("claim-text", "only 61,000 miles");
        enter();
        until("the claim is kept", () -> held().claims().size() == 1);
        assertThat(held().claims().get(0).value().zone()).isEmpty();
        assertThat(held().claims().get(0).value().judged()).isEmpty();
        until(
                "it is laid against the figures",
                () -> table("claims").getRowCount() == 1
                        && String.valueOf(table("claims").getValueAt(0, 4)).contains("61240"));
        assertThat(table("claims").getValueAt(0, 3)).isEqualTo("open (proposed)");
        robot.focusAndWaitForFocusGain(table("claims"));
        robot.pressAndReleaseKeys(KeyEvent.VK_HOME, KeyEvent.VK_DOWN, KeyEvent.VK_C);
        until("it is decided", () -> held().claims()
                .get(0)
                .value()
                .judged()
                .equals(java.util.Optional.of(quarterlight.visit.statement.Judgment.CONTRADICTED)));
        robot.pressAndReleaseKeys(KeyEvent.VK_BACK_SPACE);
        until(
                "the decision is taken back",
                () -> held().claims().get(0).value().judged().isEmpty());
    }

    @Test
    void aClaimIsTiedToThePhotoInHandAndShowsItBeside() {
        window.toggleButton("station-1").click();
        robot.waitForIdle();
        robot.focusAndWaitForFocusGain(robot.finder().findByName("photos-sheet", true));
        robot.pressAndReleaseKeys(KeyEvent.VK_HOME);
        station();
        tab(KeyEvent.VK_6);
        until(
                "the photo can be tied",
                () -> window.checkBox("claim-photo").target().isEnabled());
        assertThat(window.checkBox("claim-photo").target().getText()).contains("IMG_100.JPG");
        window.checkBox("claim-photo").click();
        type("claim-text", "the invoice lists a vinyl top");
        enter();
        until("the claim is kept", () -> held().claims().size() == 1);
        assertThat(held().claims().get(0).value().photo())
                .contains(held().photos().get(0).id());
        assertThat(window.checkBox("claim-photo").target().isSelected()).isFalse();

        robot.focusAndWaitForFocusGain(table("claims"));
        robot.pressAndReleaseKeys(KeyEvent.VK_HOME, KeyEvent.VK_DOWN);
        until("its photo stands beside it", () -> ((PhotoCanvas) robot.finder().findByName("claim-picture"))
                .photo()
                .map(Photo::id)
                .equals(Optional.of(held().photos().get(0).id())));
        window.checkBox("claim-photo").click();
        window.button("claim-keep").click();
        until(
                "the photo is let go of",
                () -> held().claims().get(0).value().photo().isEmpty());
    }

    @Test
    void aMeasureTakesNoAnswerOfAFunctionAndShowsItsLimit() {
        station();
        tab(KeyEvent.VK_3);
        until("the usual list is there", () -> table("trials").getRowCount() > 20);
        robot.focusAndWaitForFocusGain(table("trials"));
        int row = java.util.stream.IntStream.range(0, table("trials").getRowCount())
                .filter(i -> table("trials").getValueAt(i, 1).equals("Battery at rest"))
                .findFirst()
                .orElseThrow();
        window.table("trials").selectRows(row);
        robot.pressAndReleaseKeys(KeyEvent.VK_W);
        robot.waitForIdle();
        assertThat(held().trials()).as("works is no answer to a measure").isEmpty();
        type("trial-value", "12.3");
        until("it lies below the limit", () -> limit().endsWith("does not keep it."));
        window.textBox("trial-value").setText("12.4");
        until("it keeps the limit", () -> limit().endsWith("The value keeps it."));
        robot.focusAndWaitForFocusGain(window.textBox("trial-value").target());
        enter();
        until("the measure is kept", () -> held().trials().size() == 1);
        assertThat(held().trials().get(0).value().result()).isEqualTo(TrialResult.MEASURED);
    }

    private String limit() {
        return ((javax.swing.JLabel) robot.finder().findByName("trial-limit", true)).getText();
    }

    @Test
    void gapsAreListedAndAWishTakesOneAway() {
        station();
        tab(KeyEvent.VK_5);
        until("gaps are listed", () -> table("gaps").getRowCount() > 20);
        int before = table("gaps").getRowCount();
        robot.focusAndWaitForFocusGain(table("gaps"));
        robot.pressAndReleaseKeys(KeyEvent.VK_HOME, KeyEvent.VK_DOWN);
        window.spinner("wish-want").select(0);
        window.button("wish-here").click();
        until("the wish is kept", () -> held().coverage().size() == 1);
        until("one gap less", () -> table("gaps").getRowCount() == before - 1);
    }
}
