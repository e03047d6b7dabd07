package quarterlight.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JEditorPane;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JToggleButton;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.DialogFixture;
import org.junit.jupiter.api.Test;
import quarterlight.car.ZoneId;
import quarterlight.diagram.ink.Surface;
import quarterlight.edit.row.RowEdits;
import quarterlight.store.SampleVisit;
import quarterlight.store.VisitStore;
import quarterlight.ui.diagram.DiagramPanel;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.visit.Station;
import quarterlight.visit.row.RecordKind;

/** How the window is seen: the room of the drawing, coverage as a layer, help of the station, text twice as large without a word cut off. */
class SightRobotTest extends DeskRobot {
    private static final ZoneId HOOD = new ZoneId("hood");
    private static final Texts TEXTS = Texts.load();

    @Override
    protected void make(Path path) throws Exception {
        super.make(path);
        try (VisitStore store = VisitStore.openForEditing(path, CLOCK)) {
            new RowEdits(store).add(RecordKind.READINGS, List.of(SampleVisit.reading(HOOD, "105")));
        }
    }

    private boolean isShown(String name) {
        return !robot.finder()
                .findAll(c -> name.equals(c.getName()) && c.isShowing())
                .isEmpty();
    }

    private DiagramPanel diagram() {
        return (DiagramPanel) robot.finder().findByName("diagram");
    }

    private boolean says(String sentence) {
        return !robot.finder()
                .findAll(c -> c.isShowing()
                        && c instanceof JLabel label
                        && String.valueOf(label.getText()).contains(sentence))
                .isEmpty();
    }

    @Test
    void theDrawingIsNarrowedToWhatIsInHandPutAwayAndBroughtBack() {
        robot.focusAndWaitForFocusGain(robot.finder().findByName("photos-sheet"));
        robot.pressAndReleaseKeys(KeyEvent.VK_HOME);
        robot.enterText("door front left");
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        until("a photo of the left door is pinned", () -> held().pins().size() == 1);
        robot.focusAndWaitForFocusGain(robot.finder().findByName("photos-sheet"));
        robot.pressAndReleaseKeys(KeyEvent.VK_HOME);
        robot.pressAndReleaseKeys(KeyEvent.VK_F11);
        until(
                "the drawing shows the side of the photo in hand",
                () -> GuiActionRunner.execute(() -> diagram().view()).equals(Optional.of(quarterlight.car.View.LEFT)));
        int wide = GuiActionRunner.execute(
                () -> robot.finder().findByName("photos-sheet").getWidth());
        robot.pressAndReleaseKeys(KeyEvent.VK_F11);
        until(
                "it is away and the sheet has its room",
                () -> !isShown("diagram")
                        && robot.finder().findByName("photos-sheet").getWidth() > wide);
        robot.pressAndReleaseKeys(KeyEvent.VK_F11);
        until(
                "all views are back",
                () -> isShown("diagram")
                        && GuiActionRunner.execute(() -> diagram().view()).isEmpty());
    }

    @Test
    void coverageShowsWhatIsThereInPartOrMissingAndCountsWhenAsked() {
        JToggleButton layer = (JToggleButton) robot.finder().findByName("layer-coverage", true);
        until(
                "the visit is worked out",
                () -> GuiActionRunner.execute(() -> diagram()
                        .scene()
                        .map(scene -> !scene.ink().looks().isEmpty())
                        .orElse(false)));
        robot.click(layer);
        until("the hood, with one reading, is covered in part", () -> surface(HOOD)
                .equals(Optional.of(Surface.PARTIAL)));
        assertThat(surface(new ZoneId("roof"))).contains(Surface.MISSING);
        Point hood = GuiActionRunner.execute(() -> {
            var box = diagram().scene().orElseThrow().outlinesOf(HOOD).get(0).getBounds();
            return new Point(box.x + box.width / 2, box.y + box.height / 2);
        });
        robot.moveMouse(diagram(), hood);
        until("pointing at it tells what it lacks", () -> says("lacks ") && says(" of "));
        robot.click(layer);
        until("without the layer nobody is told", () -> surface(HOOD).equals(Optional.of(Surface.PLAIN)));
    }

    private Optional<Surface> surface(ZoneId zone) {
        return GuiActionRunner.execute(() -> diagram()
                .scene()
                .flatMap(scene -> Optional.ofNullable(scene.ink().looks().get(zone)))
                .map(look -> look.surface()));
    }

    @Test
    void helpOpensAtTheStationAndIsSearched() {
        withControl(KeyEvent.VK_2);
        until("Gauge is in front", () -> isShown("gauge-entry"));
        robot.pressAndReleaseKeys(KeyEvent.VK_F1);
        DialogFixture help = WindowFinder.findDialog("help").withTimeout(20_000).using(robot);
        JList<?> contents = help.list("help-contents").target();
        until("it is open at the station", () -> TEXTS.get(Station.GAUGE.textKey())
                .equals(GuiActionRunner.execute(contents::getSelectedValue)));
        help.textBox("help-search").enterText("outliers").pressAndReleaseKeys(KeyEvent.VK_ENTER);
        JEditorPane text = (JEditorPane) help.textBox("help-text").target();
        until("the words are found", () -> "outliers".equalsIgnoreCase(GuiActionRunner.execute(text::getSelectedText)));
        robot.pressAndReleaseKeys(KeyEvent.VK_ESCAPE);
        until("Escape leaves", () -> !isShown("help"));
    }

    @Test
    void noWordOfAButtonOrFieldIsCutOffAtTwiceTheSize() {
        GuiActionRunner.execute(() -> window.target().setSize(new Dimension(1280, 800)));
        for (int step = 0; step < 8; step++) {
            withControl(KeyEvent.VK_EQUALS);
        }
        until(
                "text is twice as large",
                () -> GuiActionRunner.execute(() ->
                                javax.swing.UIManager.getFont("defaultFont").getSize())
                        == 26);
        List<String> cut = new ArrayList<>();
        for (Station station : Station.values()) {
            withControl(KeyEvent.VK_0 + station.digit());
            robot.waitForIdle();
            cut.addAll(cut(station.name()));
        }
        assertThat(cut).isEmpty();

        withControl(KeyEvent.VK_1);
        robot.focusAndWaitForFocusGain(robot.finder().findByName("photos-sheet"));
        robot.enterText("h");
        until("the field that finds zones and all its rows are in sight", () -> isWhole("photos-finder"));
    }

    /** Whether what stands around a field is in sight, all of it. */
    private boolean isWhole(String name) {
        return GuiActionRunner.execute(() -> {
            JComponent around =
                    (JComponent) robot.finder().findByName(name, true).getParent();
            Rectangle seen = around.getVisibleRect();
            return seen.equals(new Rectangle(around.getSize())) && seen.height > 0;
        });
    }

    /** Buttons, and labels of fields, that are narrower or lower than what they say. */
    private List<String> cut(String where) {
        return GuiActionRunner.execute(() -> robot.finder().findAll(SightRobotTest::bearsWords).stream()
                .filter(c -> c.getWidth() < c.getPreferredSize().width - 1
                        || c.getHeight() < c.getFontMetrics(c.getFont()).getHeight())
                .map(c -> where + ": " + (c instanceof AbstractButton b ? b.getText() : ((JLabel) c).getText()) + " "
                        + c.getSize() + " wants " + c.getPreferredSize())
                .toList());
    }

    private static boolean bearsWords(Component c) {
        boolean words = c instanceof AbstractButton button
                        && button.getText() != null
                        && !button.getText().isBlank()
                || c instanceof JLabel label && label.getLabelFor() != null;
        return words && c.isShowing() && c.getWidth() > 0;
    }
}
