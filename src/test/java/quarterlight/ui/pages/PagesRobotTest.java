package quarterlight.ui.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.finder.JFileChooserFinder;
import org.assertj.swing.finder.JOptionPaneFinder;
import org.assertj.swing.finder.WindowFinder;
import org.junit.jupiter.api.Test;
import quarterlight.archive.RfcBag;
import quarterlight.table.workbook.Workbook;
import quarterlight.ui.DeskRobot;
import quarterlight.visit.ReportLength;

/** The Pages station: the pages are made by one button and their terms are kept. */
class PagesRobotTest extends DeskRobot {
    @Test
    void theVisitIsArchivedForTheBuyerAndExported() throws Exception {
        withControl(KeyEvent.VK_6);
        window.button("pages-archive-buyer").click();
        var going = JOptionPaneFinder.findOptionPane().withTimeout(20_000).using(robot);
        going.textBox("going-out")
                .requireText(Pattern.compile("(?s)Goes to the buyer:.*Stays at home:.*The originals.*"));
        GuiActionRunner.execute(() -> going.okButton().target().doClick());
        choose("for-buyer.zip");
        Path zip = folder.resolve("for-buyer.zip");
        var told = JOptionPaneFinder.findOptionPane().withTimeout(60_000).using(robot);
        told.textBox().requireText(Pattern.compile("(?s)Made .*for-buyer.zip without originals. Its SHA-256 .*"));
        GuiActionRunner.execute(() -> told.okButton().target().doClick());
        until("the sentence is gone", () -> !told.target().isShowing());
        RfcBag.Seen bag = RfcBag.of(zip);
        assertThat(bag.findings()).isEmpty();
        assertThat(bag.files().keySet())
                .contains("data/pages/report.html", "data/tables/photos.csv")
                .noneMatch(path -> path.contains("originals/"));
        export("tables", "tables");
        until("the tables are there", () -> Files.exists(folder.resolve("tables/photos.csv")));
        assertThat(Files.readAllLines(folder.resolve("tables/photos.csv"))).hasSize(13);
        export("xlsx", "whole.xlsx");
        until("the workbook is there", () -> Files.exists(folder.resolve("whole.xlsx")));
        assertThat(Workbook.isOne(Files.readAllBytes(folder.resolve("whole.xlsx"))))
                .isTrue();
    }

    /** Chooses a form, then where. */
    private void export(String form, String name) {
        window.button("pages-export").click();
        var dialog = WindowFinder.findDialog("export").withTimeout(20_000).using(robot);
        dialog.checkBox("export-mark").requireEnabled();
        dialog.radioButton("export-" + form).click();
        dialog.checkBox("export-buyer").check();
        dialog.checkBox("export-places").requireDisabled();
        dialog.checkBox("export-buyer").uncheck();
        dialog.button("export-go").click();
        choose(name);
        var told = JOptionPaneFinder.findOptionPane().withTimeout(60_000).using(robot);
        told.textBox().requireText(Pattern.compile("(?s).* written to .*" + name + ".*"));
        GuiActionRunner.execute(() -> told.okButton().target().doClick());
    }

    private void choose(String name) {
        var chooser = JFileChooserFinder.findFileChooser().withTimeout(20_000).using(robot);
        chooser.setCurrentDirectory(folder.toFile());
        chooser.fileNameTextBox().setText(name);
        chooser.approve();
    }

    @Test
    void makingIsCancelledAndLeavesNothing() throws Exception {
        withControl(KeyEvent.VK_6);
        window.button("pages-make").click();
        window.button("progress-cancel").click();
        until("the job has unwound", () -> robot.finder()
                .findAll(c -> "progress-cancel".equals(c.getName()) && c.isShowing())
                .isEmpty());
        try (var files = Files.walk(visit.resolve("pages"))) {
            assertThat(files.filter(Files::isRegularFile)).isEmpty();
        }
    }

    @Test
    void thePagesAreMadeWithTheInspectorsTerms() {
        withControl(KeyEvent.VK_6);
        window.textBox("terms").setText("Seen in daylight only.");
        window.button("pages-make").focus();
        until("the terms are kept", () -> held().facts().choices().terms().isPresent());
        assertThat(held().facts().choices().terms()).contains("Seen in daylight only.");
        assertThat(held().facts().choices().length()).isEqualTo(ReportLength.FULL);

        window.button("pages-make").click();
        until("the report is made", () -> Files.exists(visit.resolve("pages/report.html")));
        assertThat(visit.resolve("pages/diagram.pdf")).exists();
        assertThat(visit.resolve("pages/report.pdf")).exists();
        assertThat(visit.resolve("pages/report.html")).content().contains("Seen in daylight only.");
    }
}
