package quarterlight.ui.library;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JTable;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.finder.JFileChooserFinder;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.FrameFixture;
import org.junit.jupiter.api.Test;
import quarterlight.car.ZoneId;
import quarterlight.edit.fact.FactEdits;
import quarterlight.edit.row.RowEdits;
import quarterlight.store.VisitStore;
import quarterlight.table.ZoneTable;
import quarterlight.ui.DeskRobot;
import quarterlight.visit.mark.Mark;
import quarterlight.visit.mark.MarkKind;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.row.RecordKind;

/** The window of all visits: folders are named, words and numbers found, a visit opened, by the keyboard; and no visit is written to. */
class LibraryRobotTest extends DeskRobot {
    @Override
    protected void make(Path path) throws Exception {
        super.make(path);
        describe(path, "Tamarisk coupe", "2026-03-01", "3970010");
        Path other = folder.resolve("more/other");
        Files.createDirectories(other.getParent());
        super.make(other);
        describe(other, "Bryony pickup", "2025-11-30", "39700?4");
    }

    private static void describe(Path path, String car, String date, String casting) throws Exception {
        try (VisitStore store = VisitStore.openForEditing(path, CLOCK)) {
            new FactEdits(ZoneTable.load()).set(store, Map.of("car", car, "date", date, "client", "Larkin"));
            new RowEdits(store)
                    .add(
                            RecordKind.MARKS,
                            List.of(new Mark(
                                    "block",
                                    MarkKind.CASTING,
                                    casting,
                                    Optional.empty(),
                                    Optional.empty(),
                                    Optional.empty(),
                                    Optional.empty(),
                                    Optional.empty(),
                                    Optional.of(store.read().photos().get(1).id()),
                                    Optional.empty(),
                                    Optional.empty(),
                                    Optional.empty())));
            new RowEdits(store)
                    .add(
                            RecordKind.PINS,
                            List.of(new Pin(
                                    store.read().photos().get(0).id(),
                                    new ZoneId("roof"),
                                    OptionalDouble.empty(),
                                    Optional.empty(),
                                    Optional.of("seam"),
                                    Optional.empty(),
                                    Optional.empty())));
        }
    }

    private FrameFixture library() {
        robot.pressKey(KeyEvent.VK_SHIFT);
        withControl(KeyEvent.VK_L);
        robot.releaseKey(KeyEvent.VK_SHIFT);
        return WindowFinder.findFrame("library").withTimeout(20_000).using(robot);
    }

    private static List<LibraryItem> lines(FrameFixture library) {
        @SuppressWarnings("unchecked")
        JList<LibraryItem> list =
                (JList<LibraryItem>) library.list("library-list").target();
        return GuiActionRunner.execute(() -> {
            List<LibraryItem> items = new ArrayList<>();
            for (int i = 0; i < list.getModel().getSize(); i++) {
                items.add(list.getModel().getElementAt(i));
            }
            return items;
        });
    }

    private static List<String> cars(FrameFixture library) {
        return lines(library).stream()
                .filter(LibraryItem::isHead)
                .map(item -> item.visit().car())
                .toList();
    }

    private static List<String> rows(FrameFixture library) {
        return lines(library).stream()
                .flatMap(item -> item.row().stream())
                .map(row -> row.text())
                .toList();
    }

    @Test
    void wordsAndNumbersAreFoundAndTheirVisitOpens() throws Exception {
        FrameFixture library = library();
        until("both visits below the folder of the one at hand stand there, the newest first", () -> cars(library)
                .equals(List.of("Tamarisk coupe", "Bryony pickup")));
        List<String> before = files(folder.resolve("more"));
        library.textBox("library-find").enterText("casting");
        until(
                "the rows of both",
                () -> rows(library).size() == 2 && cars(library).size() == 2);
        library.toggleButton("library-number").click();
        library.textBox("library-find").deleteText().enterText("3970014");
        until("numbers like it, the nearest first", () -> rows(library)
                .equals(List.of("block; casting; 39700?4", "block; casting; 3970010")));
        library.textBox("library-find").pressAndReleaseKeys(KeyEvent.VK_DOWN);
        until(
                "the list has the keyboard",
                () -> library.list("library-list").target().isFocusOwner());
        until(
                "the line in hand is told",
                () -> library.textBox("library-title").target().getText().equals("Bryony pickup"));
        until("its picture is there", () -> lines(library).get(0).picture().isPresent());
        library.list("library-list").pressAndReleaseKeys(KeyEvent.VK_DOWN);
        assertThat(library.textBox("library-title").target().getText()).contains("39700?4");
        assertThat(files(folder.resolve("more"))).as("visits are only read").isEqualTo(before);
        library.list("library-list").pressAndReleaseKeys(KeyEvent.VK_ENTER);
        until(
                "it is open in the window of visits",
                () -> window.target().getTitle().contains("Bryony"));
        until("the row found is in hand in its station", () -> chosen("marks").contains("39700?4"));
        library.requireVisible();
        library.list("library-list").pressAndReleaseKeys(KeyEvent.VK_ESCAPE);
        until("Escape closes the window", () -> !library.target().isShowing());
        FrameFixture again = library();
        until("it opens anew", () -> cars(again).size() == 2);
        again.close();
    }

    @Test
    void aRowOpensWhereItIsAndTheVisitAtHandStaysOpen() {
        Component bench = robot.finder().findByName("photos-sheet");
        FrameFixture library = library();
        until("both visits", () -> cars(library).size() == 2);
        library.textBox("library-find").enterText("roof");
        until("the pins of both", () -> rows(library).size() == 2);
        withControl(KeyEvent.VK_4);
        library.list("library-list").selectItem(1);
        library.button("library-open").requireText("Open visit here").click();
        until(
                "Photos is in front with the photo of the pin",
                () -> bench.isShowing() && chosen("photos-pins").contains("Roof"));
        library.textBox("library-find").deleteText().enterText("3970010");
        until("the mark", () -> rows(library).size() == 1);
        library.list("library-list").selectItem(1);
        library.list("library-list").pressAndReleaseKeys(KeyEvent.VK_ENTER);
        until("Marks is in front with the mark", () -> chosen("marks").contains("3970010"));
        assertThat(bench.isDisplayable()).as("the visit was not opened again").isTrue();
        library.close();
    }

    /** The cells of the row in hand of a table. */
    private List<String> chosen(String name) {
        return GuiActionRunner.execute(
                () -> robot.finder().findAll(window.target(), c -> name.equals(c.getName()) && c.isShowing()).stream()
                        .map(JTable.class::cast)
                        .filter(table -> table.getSelectedRow() >= 0)
                        .flatMap(table -> IntStream.range(0, table.getColumnCount())
                                .mapToObj(column -> String.valueOf(table.getValueAt(table.getSelectedRow(), column))))
                        .toList());
    }

    @Test
    void foldersAreAddedAndLeftOutAndOneThatIsGoneIsTold() throws Exception {
        FrameFixture library = library();
        until("both visits", () -> cars(library).size() == 2);
        library.button("library-leave").click();
        robot.pressAndReleaseKeys(KeyEvent.VK_DOWN, KeyEvent.VK_ENTER);
        until("no folder, no visit", () -> lines(library).isEmpty());
        library.button("library-add").click();
        var chooser = JFileChooserFinder.findFileChooser().withTimeout(20_000).using(robot);
        chooser.selectFile(folder.resolve("more").toFile());
        chooser.approve();
        until("the visit of the folder added", () -> cars(library).equals(List.of("Bryony pickup")));
        Files.move(folder.resolve("more"), folder.resolve("pulled out"));
        library.textBox("library-find").pressAndReleaseKeys(KeyEvent.VK_F5);
        until("its drive is missed", () -> foot(library).contains("drive"));
        assertThat(lines(library)).isEmpty();
        Files.move(folder.resolve("pulled out"), folder.resolve("more"));
        library.textBox("library-find").pressAndReleaseKeys(KeyEvent.VK_F5);
        until("it is back", () -> cars(library).equals(List.of("Bryony pickup")));
        library.close();
    }

    private static String foot(FrameFixture library) {
        JLabel label = library.label("foot-said").target();
        return GuiActionRunner.execute(label::getText);
    }

    private static List<String> files(Path below) throws Exception {
        try (Stream<Path> all = Files.walk(below)) {
            List<String> files = new ArrayList<>();
            for (Path file : all.filter(Files::isRegularFile).sorted().toList()) {
                files.add(file + " " + Files.size(file) + " " + Files.getLastModifiedTime(file));
            }
            return files;
        }
    }
}
