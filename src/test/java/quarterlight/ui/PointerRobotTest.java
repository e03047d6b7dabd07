package quarterlight.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleSupplier;
import java.util.stream.Stream;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.timing.Pause;
import org.junit.jupiter.api.Test;
import quarterlight.car.View;
import quarterlight.car.ZoneId;
import quarterlight.cli.TestPhotos;
import quarterlight.edit.row.RowEdits;
import quarterlight.store.VisitStore;
import quarterlight.ui.diagram.DiagramPanel;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.view.PhotoCanvas;
import quarterlight.ui.kit.view.ZoomScroll;
import quarterlight.visit.VisitParts;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.row.RecordKind;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.Statement;

/** What the pointer does in every station: a right click offers, a double click shows large, Ctrl and the wheel zoom. */
class PointerRobotTest extends DeskRobot {
    private static final ZoneId HOOD = new ZoneId("hood");
    private static final int NEXT_CLICK_MS = 900;
    private static final Texts TEXTS = Texts.load();

    @Override
    protected void make(Path path) throws Exception {
        TestPhotos.write(
                folder.resolve("card/IMG_099.JPG"),
                new BufferedImage(1600, 1200, BufferedImage.TYPE_INT_RGB),
                "2026:02:28 09:59:00");
        super.make(path);
        try (VisitStore store = VisitStore.openForEditing(path, CLOCK)) {
            PhotoId photo = store.read().photos().stream()
                    .filter(one -> one.file().name().equals("IMG_099.JPG"))
                    .findFirst()
                    .orElseThrow()
                    .id();
            RowEdits edits = new RowEdits(store);
            edits.add(RecordKind.PINS, List.of(VisitParts.pin(photo, HOOD)));
            edits.add(RecordKind.MARKS, List.of(VisitParts.stamp("Hood stamp", "H7?", HOOD, photo)));
            edits.add(
                    RecordKind.STATEMENTS,
                    List.of(new Statement(
                            HOOD,
                            Facets.of(Condition.DAMAGED),
                            "dented at the front",
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty())));
        }
    }

    private Component named(String name) {
        return robot.finder().findByName(name, true);
    }

    private boolean isShowing(String name) {
        return !robot.finder()
                .findAll(c -> name.equals(c.getName()) && c.isShowing())
                .isEmpty();
    }

    private Optional<JPopupMenu> menu() {
        return robot.finder().findAll(c -> "context-menu".equals(c.getName()) && c.isShowing()).stream()
                .map(JPopupMenu.class::cast)
                .findFirst();
    }

    private List<String> offered() {
        until("the menu is open", () -> menu().isPresent());
        return GuiActionRunner.execute(() -> Stream.of(menu().orElseThrow().getComponents())
                .filter(JMenuItem.class::isInstance)
                .map(item -> ((JMenuItem) item).getText())
                .toList());
    }

    private void take(String key) {
        JMenuItem item =
                GuiActionRunner.execute(() -> Stream.of(menu().orElseThrow().getComponents())
                        .filter(JMenuItem.class::isInstance)
                        .map(JMenuItem.class::cast)
                        .filter(one -> one.getText().equals(TEXTS.get(key)))
                        .findFirst()
                        .orElseThrow());
        robot.click(item);
        until("the menu is closed", () -> menu().isEmpty());
    }

    private void leaveMenu() {
        robot.pressAndReleaseKeys(KeyEvent.VK_ESCAPE);
        until("the menu is closed", () -> menu().isEmpty());
    }

    private static Point middle(Component of) {
        return new Point(of.getWidth() / 2, of.getHeight() / 2);
    }

    private void rightClick(Component on, Point at) {
        robot.click(on, at, MouseButton.RIGHT_BUTTON, 1);
    }

    private void byKey() {
        robot.pressKey(KeyEvent.VK_SHIFT);
        robot.pressAndReleaseKeys(KeyEvent.VK_F10);
        robot.releaseKey(KeyEvent.VK_SHIFT);
    }

    /** Where the hood is drawn in the view from above. */
    private Point hood() {
        DiagramPanel diagram = (DiagramPanel) named("diagram");
        until("it is drawn", () -> diagram.scene().isPresent());
        return GuiActionRunner.execute(() -> {
            for (int y = 0; y < diagram.getHeight(); y += 4) {
                for (int x = 0; x < diagram.getWidth(); x += 4) {
                    if (diagram.scene()
                                    .orElseThrow()
                                    .hit(x, y)
                                    .flatMap(hit -> hit.zone())
                                    .equals(Optional.of(HOOD))
                            && diagram.scene()
                                    .orElseThrow()
                                    .hit(x + 6, y + 6)
                                    .flatMap(hit -> hit.zone())
                                    .equals(Optional.of(HOOD))) {
                        return new Point(x + 3, y + 3);
                    }
                }
            }
            throw new AssertionError("the hood is not drawn");
        });
    }

    @Test
    void aRightClickAndTheMenuKeyOfferWhatCanBeDoneThere() {
        robot.focusAndWaitForFocusGain(named("photos-sheet"));
        robot.pressAndReleaseKeys(KeyEvent.VK_HOME);
        byKey();
        assertThat(offered())
                .contains(TEXTS.get("do.grounds"), TEXTS.get("photos.do.aside"), TEXTS.get("photos.do.caption"));
        leaveMenu();
        rightClick(named("photos-sheet"), new Point(40, 60));
        assertThat(offered()).contains(TEXTS.get("photos.do.aside"));
        leaveMenu();
        rightClick(named("photos-large"), middle(named("photos-large")));
        assertThat(offered()).contains(TEXTS.get("photos.do.turn"));
        leaveMenu();

        rightClick(named("diagram"), hood());
        assertThat(offered()).contains(TEXTS.get("do.grounds"), TEXTS.get("diagram.do.photos"));
        take("do.grounds");
        until("its grounds are shown", () -> isShowing("lens"));
        robot.pressAndReleaseKeys(KeyEvent.VK_ESCAPE);
        until("left", () -> !isShowing("lens"));

        withControl(KeyEvent.VK_3);
        rightClick(named("rust-photo"), middle(named("rust-photo")));
        assertThat(offered()).contains(TEXTS.get("beside.do.closer"));
        leaveMenu();

        withControl(KeyEvent.VK_4);
        window.table("marks").selectRows(0);
        until("its photo is beside it", () -> isShowing("beside"));
        rightClick(named("beside"), middle(named("beside")));
        assertThat(offered()).contains(TEXTS.get("beside.do.turn"), TEXTS.get("do.grounds"));
        leaveMenu();

        withControl(KeyEvent.VK_5);
        until(
                "the statement is listed",
                () -> window.table("statements").target().getRowCount() == 1);
        window.table("statements").selectRows(0);
        byKey();
        assertThat(offered()).contains(TEXTS.get("do.grounds"), TEXTS.get("notes.withdraw"));
        take("notes.remove");
        until("it is removed", () -> held().statements().isEmpty());
        withControl(KeyEvent.VK_Z);
        until("and brought back", () -> held().statements().size() == 1);
    }

    @Test
    void aDoubleClickShowsLargeAndBack() {
        Component sheet = named("photos-sheet");
        doubleClick(sheet, new Point(40, 60), "the photo has the room of the sheet", () -> !isShowing("photos-sheet"));
        robot.pressAndReleaseKeys(KeyEvent.VK_ESCAPE);
        until("the sheet is back", () -> isShowing("photos-sheet"));

        robot.focusAndWaitForFocusGain(sheet);
        robot.pressAndReleaseKeys(KeyEvent.VK_HOME);
        for (String name : List.of("photos-large", "rust-photo", "beside")) {
            withControl(
                    name.equals("beside") ? KeyEvent.VK_4 : name.startsWith("rust") ? KeyEvent.VK_3 : KeyEvent.VK_1);
            PhotoCanvas canvas = (PhotoCanvas) named(name);
            until(name + " shows the large photo", () -> isLarge(canvas) && zoom(canvas) > 0);
            double whole = zoom(canvas);
            doubleClick(canvas, middle(canvas), name + ": every pixel", () -> zoom(canvas) != whole);
            doubleClick(canvas, middle(canvas), name + ": the whole photo", () -> zoom(canvas) == whole);
        }

        DiagramPanel diagram = (DiagramPanel) named("diagram");
        withControl(KeyEvent.VK_1);
        until("it is drawn", () -> diagram.scene().isPresent());
        Point beside = GuiActionRunner.execute(() -> {
            for (int x = 2; x < diagram.getWidth(); x += 4) {
                boolean free = diagram.scene()
                        .orElseThrow()
                        .hit(x, 12)
                        .flatMap(hit -> hit.zone())
                        .isEmpty();
                if (free && diagram.scene().orElseThrow().viewAt(x, 12).isPresent()) {
                    return new Point(x, 12);
                }
            }
            throw new AssertionError("no room beside the car");
        });
        doubleClick(diagram, beside, "one view is large", () -> view(diagram).isPresent());
        robot.focusAndWaitForFocusGain(diagram);
        robot.pressAndReleaseKeys(KeyEvent.VK_ESCAPE);
        until("all views again", () -> view(diagram).isEmpty());
    }

    private static Optional<View> view(DiagramPanel diagram) {
        return GuiActionRunner.execute(diagram::view);
    }

    private static double zoom(PhotoCanvas canvas) {
        return GuiActionRunner.execute(() -> canvas.zoom().orElse(0.0));
    }

    /** On a busy computer two clicks may lie too far apart to be one double click; then once more. */
    private void doubleClick(Component on, Point at, String what, BooleanSupplier done) {
        until(what, () -> {
            // two clicks more at once would be the third and the fourth
            Pause.pause(NEXT_CLICK_MS);
            robot.click(on, at, MouseButton.LEFT_BUTTON, 2);
            robot.waitForIdle();
            return done.getAsBoolean();
        });
    }

    private static boolean isLarge(PhotoCanvas canvas) {
        return GuiActionRunner.execute(
                () -> canvas.photo().map(photo -> photo.file().name()).equals(Optional.of("IMG_099.JPG")));
    }

    private static double factor(Component scroll) {
        return GuiActionRunner.execute(((ZoomScroll) scroll)::factor);
    }

    @Test
    void controlAndTheWheelZoomEveryPicturePageAndDiagram() {
        zooms("photos-large", KeyEvent.VK_1, () -> zoom((PhotoCanvas) named("photos-large")));
        zooms("rust-photo", KeyEvent.VK_3, () -> zoom((PhotoCanvas) named("rust-photo")));
        zooms("beside", KeyEvent.VK_4, () -> zoom((PhotoCanvas) named("beside")));
        zooms("diagram", KeyEvent.VK_2, () -> factor(named("diagram-zoom")));
        zooms("pages-preview", KeyEvent.VK_6, () -> factor(named("pages-zoom")));
    }

    private void zooms(String name, int station, DoubleSupplier zoom) {
        withControl(station);
        until(name + " is shown", () -> isShowing(name) && zoom.getAsDouble() > 0);
        double before = zoom.getAsDouble();
        robot.moveMouse(named(name), middle(named(name)));
        wheel(-2);
        until(name + " is larger", () -> zoom.getAsDouble() > before);
        double larger = zoom.getAsDouble();
        wheel(2);
        until(name + " is smaller again", () -> zoom.getAsDouble() < larger);
    }

    private void wheel(int clicks) {
        robot.pressKey(KeyEvent.VK_CONTROL);
        robot.rotateMouseWheel(clicks);
        robot.releaseKey(KeyEvent.VK_CONTROL);
        robot.waitForIdle();
    }
}
