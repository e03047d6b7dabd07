package quarterlight.ui.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.finder.JFileChooserFinder;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.DialogFixture;
import org.assertj.swing.fixture.FrameFixture;
import org.junit.jupiter.api.Test;
import quarterlight.car.ZoneId;
import quarterlight.edit.row.RowEdits;
import quarterlight.store.VisitStore;
import quarterlight.ui.DeskRobot;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.reading.Reading;
import quarterlight.visit.row.RecordKind;

/** Two cars: two visits are picked, laid side by side by zones, and their page is made. */
class TwoCarsRobotTest extends DeskRobot {
    @Override
    protected void make(Path path) throws Exception {
        super.make(path);
        measure(path, "4.6", "4.8", "5.0");
        Path other = folder.resolve("other");
        super.make(other);
        measure(other, "24", "26", "31");
    }

    private static void measure(Path path, String... mils) throws Exception {
        try (VisitStore store = VisitStore.openForEditing(path, CLOCK)) {
            List<Reading> rows = java.util.Arrays.stream(mils)
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

    @Test
    void twoVisitsArePickedComparedAndTheirPageIsMade() throws Exception {
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
        FrameFixture two =
                WindowFinder.findFrame("two-cars").withTimeout(60_000).using(robot);
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
        two.button("compare-make").click();
        var save = JFileChooserFinder.findFileChooser().withTimeout(20_000).using(robot);
        Path pages = Files.createDirectories(folder.resolve("both"));
        save.selectFile(pages.toFile());
        save.approve();
        until("the page is made", () -> Files.exists(pages.resolve("compare.html")));
        assertThat(pages.resolve("compare.pdf")).exists();
        two.close();
    }

    /** Every word of the first part. */
    private static String said(FrameFixture two) {
        return GuiActionRunner.execute(() -> {
            JTabbedPane parts = two.tabbedPane("compare-parts").target();
            return String.join(" ", ((MattersPane) parts.getComponentAt(0)).words());
        });
    }
}
