package quarterlight.ui.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.JLabel;
import javax.swing.JList;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import quarterlight.car.ZoneId;
import quarterlight.edit.row.RowEdits;
import quarterlight.store.VisitStore;
import quarterlight.ui.DeskRobot;
import quarterlight.ui.kit.Texts;
import quarterlight.visit.row.RecordKind;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.Severity;
import quarterlight.visit.statement.Statement;

/** Pages that were made: a click on their words leads to the evidence behind, and changes made since are named. */
class PreviewRobotTest extends DeskRobot {
    private static final String WORDS = "Filler over the lower third, seen at the edge.";
    private static final Texts TEXTS = Texts.load();

    @Override
    protected void make(Path path) throws Exception {
        super.make(path);
        try (VisitStore store = VisitStore.openForEditing(path, CLOCK)) {
            new RowEdits(store)
                    .add(
                            RecordKind.STATEMENTS,
                            List.of(new Statement(
                                    new ZoneId("quarter-left"),
                                    Facets.of(Condition.FILLER),
                                    WORDS,
                                    Optional.of(Severity.MAJOR),
                                    Optional.empty(),
                                    Optional.empty(),
                                    Optional.empty())));
        }
    }

    private boolean isShowing(String name) {
        return !robot.finder()
                .findAll(c -> name.equals(c.getName()) && c.isShowing())
                .isEmpty();
    }

    private String note() {
        return GuiActionRunner.execute(() -> ((JLabel) robot.finder().findByName("pages-note", true)).getText());
    }

    @Test
    void aClickOnAPageLeadsToTheEvidenceAndChangesSinceAreNamed() {
        withControl(KeyEvent.VK_6);
        window.button("pages-make").click();
        until("the pages are made", () -> Files.exists(visit.resolve("pages/brief.pdf")));
        until("they are fresh", () -> note().contains(TEXTS.get("pages.fresh")));
        PreviewPane preview = (PreviewPane) robot.finder().findByName("pages-preview", true);
        until("the words stand on the page", () -> place(preview).isPresent());
        until("the page is drawn at the width it is shown at", () -> GuiActionRunner.execute(preview::isSharp));
        robot.click(preview, place(preview).orElseThrow(), MouseButton.LEFT_BUTTON, 1);
        until("its grounds are shown", () -> isShowing("lens"));
        Object first = GuiActionRunner.execute(() -> {
            JList<?> list = robot.finder().findByName("lens-grounds", JList.class, true);
            return list.getModel().getElementAt(0);
        });
        assertThat(String.valueOf(first)).contains("Filler over the lower third");
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        until("Enter goes to the statement", () -> !isShowing("lens") && isShowing("statements"));

        withControl(KeyEvent.VK_2);
        withControl(KeyEvent.VK_ENTER);
        robot.focusAndWaitForFocusGain(window.textBox("gauge-entry").target());
        robot.enterText("4.2");
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        until("the reading is held", () -> held().readings().size() == 1);
        withControl(KeyEvent.VK_6);
        until("the change is named", () -> note().contains("add reading 4.2 mil on "));
        assertThat(note()).doesNotContain(TEXTS.get("pages.fresh"));
    }

    /** Where the statement stands on the page shown. */
    private static Optional<Point> place(Component preview) {
        return GuiActionRunner.execute(() -> ((PreviewPane) preview).placeOf("Filler over the lower third"));
    }
}
