package quarterlight.ui.dialog;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.datatransfer.Transferable;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JRootPane;
import javax.swing.SwingUtilities;
import javax.swing.TransferHandler;
import org.assertj.swing.core.matcher.JButtonMatcher;
import org.assertj.swing.finder.JOptionPaneFinder;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.DialogFixture;
import org.junit.jupiter.api.Test;
import quarterlight.car.ZoneId;
import quarterlight.edit.row.RowEdits;
import quarterlight.store.VisitStore;
import quarterlight.ui.DeskRobot;
import quarterlight.ui.DroppedFiles;
import quarterlight.visit.VisitParts;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.reading.Reading;
import quarterlight.visit.row.RecordKind;

/** A table of some other program is dropped on the window: columns and zones are named once; times place what has no zone. */
class TableRobotTest extends DeskRobot {
    /** Photos come every half minute from 10:00; two are pinned. */
    @Override
    protected void make(Path path) throws Exception {
        super.make(path);
        try (VisitStore store = VisitStore.openForEditing(path, CLOCK)) {
            List<PhotoId> photos =
                    store.read().photos().stream().map(photo -> photo.id()).toList();
            new RowEdits(store).add(RecordKind.PINS, List.of(pin(photos.get(0), "hood"), pin(photos.get(4), "roof")));
        }
    }

    private static Pin pin(PhotoId photo, String zone) {
        return VisitParts.pin(photo, new ZoneId(zone));
    }

    private void drop(String name, String text) throws Exception {
        Path file = Files.writeString(folder.resolve(name), text);
        Transferable files = new DroppedFiles(List.of(file.toFile()));
        SwingUtilities.invokeAndWait(() -> {
            JRootPane root = SwingUtilities.getRootPane(window.target());
            JComponent target = (JComponent) robot.finder()
                    .find(c -> c instanceof JComponent one && one.getTransferHandler() instanceof FileDrop);
            assertThat(root).isNotNull();
            target.getTransferHandler().importData(new TransferHandler.TransferSupport(target, files));
        });
    }

    private List<String> readings() {
        return held().readings().stream()
                .map(Recorded::value)
                .map((Reading reading) -> reading.zone().value())
                .toList();
    }

    private void dismiss() {
        JOptionPaneFinder.findOptionPane().using(robot).buttonWithText("OK").click();
    }

    @Test
    void columnsAndZonesAreConfirmedOnceAndKnownTheNextTime() throws Exception {
        drop("gauge.csv", "Nr;Teil;Wert;Einheit\n1;hood;120,5;um\n2;Top roof;98;um\n3;Top roof;x;um\n");
        DialogFixture columns = WindowFinder.findDialog("columns").using(robot);
        columns.comboBox("tables.value").requireSelection("Wert");
        columns.comboBox("tables.zone").requireSelection("Teil");
        columns.comboBox("tables.unit").requireSelection("Einheit");
        columns.textBox("tables-name").setText("shop gauge");
        columns.button("tables-take").click();
        until("both good rows are kept", () -> readings().equals(List.of("hood", "roof")));
        dismiss();
        drop("second.csv", "Nr;Teil;Wert;Einheit\n1;Top roof;101;um\n");
        DialogFixture again = WindowFinder.findDialog("columns").using(robot);
        again.textBox("tables-name").requireText("shop gauge");
        again.button(JButtonMatcher.withName("tables-take")).click();
        until("the third reading is kept", () -> readings().equals(List.of("hood", "roof", "roof")));
        dismiss();
    }

    @Test
    void readingsWithTimesArePlacedByThePhotosOnlyWhenAccepted() throws Exception {
        drop(
                "times.csv",
                "Time,Thickness\n2026-02-28 10:00:06,120\n2026-02-28 10:00:10,122\n2026-02-28 10:02:07,98\n2026-02-28 12:00:00,99\n");
        WindowFinder.findDialog("columns").using(robot).button("tables-take").click();
        DialogFixture places = WindowFinder.findDialog("places").using(robot);
        places.table("place-table").requireRowCount(4);
        assertThat(held().readings()).isEmpty();
        places.table("place-table").selectRows(1);
        places.button("place.accept").click();
        until("one reading is kept", () -> readings().equals(List.of("hood")));
        places.button("place.accept-all").click();
        until("the others are kept where suggested", () -> readings().equals(List.of("hood", "hood", "roof")));
        places.table("place-table").requireRowCount(1);
        places.button("place.close").click();
        JOptionPaneFinder.findOptionPane()
                .using(robot)
                .buttonWithText("Leave them out")
                .click();
        assertThat(readings()).hasSize(3);
    }
}
