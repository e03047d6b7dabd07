package quarterlight.ui.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.swing.JList;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import javax.swing.JTextArea;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.finder.JFileChooserFinder;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.DialogFixture;
import org.assertj.swing.fixture.FrameFixture;
import org.assertj.swing.timing.Pause;
import org.junit.jupiter.api.Test;
import quarterlight.car.ZoneId;
import quarterlight.edit.row.RowEdits;
import quarterlight.store.VisitStore;
import quarterlight.ui.DeskRobot;
import quarterlight.ui.compare.zoom.ZoomedPhoto;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.VisitParts;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.reading.Reading;
import quarterlight.visit.row.RecordKind;

/** Two cars: two visits are picked, laid side by side by zones, and their page is made. */
class TwoCarsRobotTest extends DeskRobot {
    private static final int NEXT_CLICK_MS = 900;

    @Override
    protected void make(Path path) throws Exception {
        super.make(path);
        measure(path, "4.6", "4.8", "5.0");
        pin(path);
        Path other = folder.resolve("other");
        super.make(other);
        measure(other, "24", "26", "31");
        pin(other);
    }

    /** Two photos with a patch of another color than black, at the hood and at the roof. */
    private static void pin(Path path) throws Exception {
        try (VisitStore store = VisitStore.openForEditing(path, CLOCK)) {
            List<Photo> photos = store.read().photos();
            new RowEdits(store)
                    .add(
                            RecordKind.PINS,
                            List.of(
                                    VisitParts.pin(photos.get(3).id(), new ZoneId("hood")),
                                    VisitParts.pin(photos.get(1).id(), new ZoneId("roof"))));
        }
    }

    private static void measure(Path path, String... mils) throws Exception {
        try (VisitStore store = VisitStore.openForEditing(path, CLOCK)) {
            List<Reading> rows = Arrays.stream(mils)
                    .map(mil -> new Reading(
                            new ZoneId("hood"),
                            new GaugeValue.Measured(new java.math.BigDecimal(mil), ThicknessUnit.MIL),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty()))
                    .toList();
            new RowEdits(store).add(RecordKind.READINGS, rows);
        }
    }

    /** Picks the other visit and waits for the window of both. */
    private FrameFixture twoCars() {
        robot.pressKey(KeyEvent.VK_SHIFT);
        withControl(KeyEvent.VK_C);
        robot.releaseKey(KeyEvent.VK_SHIFT);
        DialogFixture pick =
                WindowFinder.findDialog("two-visits").withTimeout(20_000).using(robot);
        pick.button("two-choose-B").click();
        var chooser = JFileChooserFinder.findFileChooser().withTimeout(20_000).using(robot);
        chooser.selectFile(folder.resolve("other").toFile());
        chooser.approve();
        pick.button("two-go").click();
        return WindowFinder.findFrame("two-cars").withTimeout(60_000).using(robot);
    }

    @Test
    void twoVisitsArePickedComparedAndTheirPageIsMade() throws Exception {
        FrameFixture two = twoCars();
        JTabbedPane parts = two.tabbedPane("compare-parts").target();
        int paint = parts.indexOfTab("Paint");
        GuiActionRunner.execute(() -> parts.setSelectedIndex(paint));
        JTable panels = two.table().target();
        List<String> hood = IntStream.range(0, panels.getRowCount())
                .mapToObj(row -> IntStream.range(0, panels.getColumnCount())
                        .mapToObj(column -> String.valueOf(panels.getValueAt(row, column)))
                        .collect(Collectors.joining(" | ")))
                .filter(row -> row.startsWith("Hood |"))
                .toList();
        assertThat(hood).singleElement().satisfies(row -> assertThat(row).contains("4.8", "27.0"));
        two.spinner("care-structure-number").enterTextAndCommit("7");
        until("the rows are ordered by what the buyer cares about", () -> said(two)
                .contains("structure 7"));
        two.slider("care-structure").slideTo(3);
        until("dragging gives a weight as typing does", () -> said(two).contains("structure 3"));
        assertThat(two.spinner("care-structure-number").target().getValue()).isEqualTo(3);
        GuiActionRunner.execute(() -> two.target().setSize(900, 760));
        for (int part = 0; part < parts.getTabCount(); part++) {
            int at = part;
            GuiActionRunner.execute(() -> parts.setSelectedIndex(at));
            until("no sentence is cut off in part " + part, () -> cutOff(parts).isEmpty());
        }
        two.button("compare-make").click();
        var save = JFileChooserFinder.findFileChooser().withTimeout(20_000).using(robot);
        Path pages = Files.createDirectories(folder.resolve("both"));
        save.selectFile(pages.toFile());
        save.approve();
        until("the page is made", () -> Files.exists(pages.resolve("compare.html")));
        assertThat(pages.resolve("compare.pdf")).exists();
        two.close();
    }

    @Test
    void placesAreSteppedThroughByKeyAndBothPhotosZoomTogether() {
        FrameFixture two = twoCars();
        JTabbedPane parts = two.tabbedPane("compare-parts").target();
        GuiActionRunner.execute(() -> parts.setSelectedIndex(1));
        JList<?> places = two.list("places").target();
        until("there are places to step through", () -> size(places) >= 2);
        int first = chosen(places);
        press(KeyEvent.VK_PAGE_DOWN);
        until("Page Down goes to the next place", () -> chosen(places) == first + 1);
        press(KeyEvent.VK_PAGE_UP);
        until("Page Up goes back", () -> chosen(places) == first);
        press(KeyEvent.VK_PAGE_UP);
        until("the first has none before it", () -> chosen(places) == first);
        while (!both(parts) && chosen(places) < size(places) - 1) {
            int before = chosen(places);
            press(KeyEvent.VK_PAGE_DOWN);
            until("the next place", () -> chosen(places) == before + 1);
        }
        until("a photo of each car is shown", () -> both(parts));
        List<BufferedImage> fitted = painted(parts);
        withControl(KeyEvent.VK_EQUALS);
        until("both are zoomed by key", () -> differ(fitted, painted(parts)));
        withControl(KeyEvent.VK_0);
        until("both are fitted again", () -> same(fitted, painted(parts)));
        robot.rotateMouseWheel(photos(parts).get(0), -3);
        until("the wheel over one zooms both", () -> differ(fitted, painted(parts)));
        List<BufferedImage> zoomed = painted(parts);
        drag(photos(parts).get(0), 90, 60);
        until("dragging one moves both", () -> differ(zoomed, painted(parts)));
        List<BufferedImage> dragged = painted(parts);
        drag(photos(parts).get(1), -90, -60);
        until("dragging the other back moves both back", () -> same(zoomed, painted(parts)));
        press(KeyEvent.VK_RIGHT);
        until("an arrow key moves both", () -> differ(zoomed, painted(parts)));
        press(KeyEvent.VK_LEFT);
        until("the opposite key moves both back", () -> same(zoomed, painted(parts)));
        assertThat(same(zoomed, dragged)).isFalse();
        withControl(KeyEvent.VK_0);
        until("both are fitted again", () -> same(fitted, painted(parts)));
        robot.click(photos(parts).get(0), MouseButton.RIGHT_BUTTON, 1);
        until("a menu offers how to look", () -> menu().isPresent());
        assertThat(GuiActionRunner.execute(() -> menu().orElseThrow().getComponentCount()))
                .isEqualTo(3);
        robot.click(
                (JMenuItem) GuiActionRunner.execute(() -> menu().orElseThrow().getComponent(0)));
        until("closer moves both closer", () -> differ(fitted, painted(parts)));
        withControl(KeyEvent.VK_0);
        until("and back", () -> same(fitted, painted(parts)));
        until("a double click shows every pixel of both", () -> {
            // two clicks more at once would be the third and the fourth
            Pause.pause(NEXT_CLICK_MS);
            robot.click(photos(parts).get(1), new Point(60, 60), MouseButton.LEFT_BUTTON, 2);
            robot.waitForIdle();
            return differ(fitted, painted(parts));
        });
        two.close();
    }

    private Optional<JPopupMenu> menu() {
        return robot.finder().findAll(c -> "context-menu".equals(c.getName()) && c.isShowing()).stream()
                .map(JPopupMenu.class::cast)
                .findFirst();
    }

    private void drag(ZoomedPhoto photo, int byX, int byY) {
        Point from = new Point(photo.getWidth() / 2, photo.getHeight() / 2);
        robot.pressMouse(photo, from);
        robot.moveMouse(photo, from.x + byX / 2, from.y + byY / 2);
        robot.moveMouse(photo, from.x + byX, from.y + byY);
        robot.releaseMouse(MouseButton.LEFT_BUTTON);
        robot.waitForIdle();
    }

    private void press(int key) {
        robot.pressAndReleaseKeys(key);
        robot.waitForIdle();
    }

    private static int size(JList<?> list) {
        return GuiActionRunner.execute(() -> list.getModel().getSize());
    }

    private static int chosen(JList<?> list) {
        return GuiActionRunner.execute(list::getSelectedIndex);
    }

    private List<ZoomedPhoto> photos(JTabbedPane parts) {
        return robot.finder().findAll(parts, ZoomedPhoto.class::isInstance).stream()
                .map(ZoomedPhoto.class::cast)
                .sorted(Comparator.comparingInt(photo -> photo.getLocationOnScreen().x))
                .toList();
    }

    /** Whether each side shows a photo, which has other colors than a sheet with a line of words. */
    private boolean both(JTabbedPane parts) {
        robot.waitForIdle();
        return painted(parts).stream().allMatch(TwoCarsRobotTest::isPhoto);
    }

    /** The photos of this test are black but for one patch. */
    private static boolean isPhoto(BufferedImage side) {
        int middle = side.getRGB(side.getWidth() / 2, side.getHeight() * 9 / 10);
        return (middle >> 16 & 0xFF) < 0x20 && (middle >> 8 & 0xFF) < 0x20 && (middle & 0xFF) < 0x20;
    }

    private List<BufferedImage> painted(JTabbedPane parts) {
        List<ZoomedPhoto> sides = photos(parts);
        return GuiActionRunner.execute(() -> sides.stream()
                .map(side -> {
                    BufferedImage image =
                            new BufferedImage(side.getWidth(), side.getHeight(), BufferedImage.TYPE_INT_RGB);
                    Graphics2D g = image.createGraphics();
                    side.paint(g);
                    g.dispose();
                    // without the frame that shows where the keys go
                    return image.getSubimage(2, 2, side.getWidth() - 4, side.getHeight() - 4);
                })
                .toList());
    }

    private static boolean differ(List<BufferedImage> before, List<BufferedImage> now) {
        return !equal(before.get(0), now.get(0)) && !equal(before.get(1), now.get(1));
    }

    private static boolean same(List<BufferedImage> before, List<BufferedImage> now) {
        return equal(before.get(0), now.get(0)) && equal(before.get(1), now.get(1));
    }

    private static boolean equal(BufferedImage one, BufferedImage other) {
        int w = one.getWidth();
        int h = one.getHeight();
        return w == other.getWidth()
                && h == other.getHeight()
                && Arrays.equals(one.getRGB(0, 0, w, h, null, 0, w), other.getRGB(0, 0, w, h, null, 0, w));
    }

    /** Sentences that have less room than they take. */
    private List<String> cutOff(JTabbedPane parts) {
        return GuiActionRunner.execute(
                () -> robot.finder().findAll(parts, c -> c instanceof JTextArea && c.isShowing()).stream()
                        .map(JTextArea.class::cast)
                        .filter(area -> area.getHeight() < area.getPreferredSize().height)
                        .map(JTextArea::getText)
                        .toList());
    }

    /** Every word of the first part. */
    private static String said(FrameFixture two) {
        return GuiActionRunner.execute(() -> {
            JTabbedPane parts = two.tabbedPane("compare-parts").target();
            return String.join(" ", ((MattersPane) parts.getComponentAt(0)).words());
        });
    }
}
