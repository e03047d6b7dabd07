package quarterlight.ui.lens;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.JList;
import javax.swing.JTable;
import javax.swing.JToolTip;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.timing.Pause;
import org.junit.jupiter.api.Test;
import quarterlight.car.ZoneId;
import quarterlight.edit.row.RowEdits;
import quarterlight.store.VisitStore;
import quarterlight.ui.DeskRobot;
import quarterlight.ui.diagram.DiagramPanel;
import quarterlight.ui.kit.view.PhotoCanvas;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.VisitParts;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.reading.Reading;
import quarterlight.visit.row.RecordKind;

/** F3 shows what a zone or a row rests on; the arrows step through it with its photo, Enter goes there. */
class EvidenceLensRobotTest extends DeskRobot {
    private static final ZoneId HOOD = new ZoneId("hood");
    /** Longer than the delay of a tool tip. */
    private static final int REST_MS = 1_100;

    private PhotoId photo;

    @Override
    protected void make(Path path) throws Exception {
        super.make(path);
        try (VisitStore store = VisitStore.openForEditing(path, CLOCK)) {
            photo = store.read().photos().get(2).id();
            RowEdits edits = new RowEdits(store);
            edits.add(RecordKind.READINGS, List.of(reading("5.1"), reading("5.4"), reading("4.9")));
            edits.add(RecordKind.PINS, List.of(VisitParts.pin(photo, HOOD)));
            edits.add(RecordKind.MARKS, List.of(VisitParts.stamp("Hood stamp", "H7?", HOOD, photo)));
        }
    }

    private static Reading reading(String mils) {
        return new Reading(
                HOOD,
                new GaugeValue.Measured(new BigDecimal(mils), ThicknessUnit.MIL),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private boolean isOpen() {
        return !robot.finder()
                .findAll(c -> "lens".equals(c.getName()) && c.isShowing())
                .isEmpty();
    }

    private List<Ground> grounds() {
        return GuiActionRunner.execute(() -> {
            JList<?> list = robot.finder().findByName("lens-grounds", JList.class, true);
            return IntStream.range(0, list.getModel().getSize())
                    .mapToObj(i -> (Ground) list.getModel().getElementAt(i))
                    .toList();
        });
    }

    private boolean isPhotoShown() {
        return robot.finder().findAll(c -> "lens-photo".equals(c.getName()) && c.isShowing()).stream()
                .map(PhotoCanvas.class::cast)
                .anyMatch(canvas -> canvas.photo().map(one -> one.id()).equals(Optional.of(photo)));
    }

    /** What a tool tip says of a place on which the pointer rests. */
    private Optional<String> rested(Component on, Point at) {
        robot.moveMouse(on, new Point(at.x + 1, at.y));
        robot.moveMouse(on, at);
        Pause.pause(REST_MS);
        return GuiActionRunner.execute(
                () -> robot.finder().findAll(c -> c instanceof JToolTip && c.isShowing()).stream()
                        .map(tip -> ((JToolTip) tip).getTipText())
                        .findFirst());
    }

    @Test
    void aPointerThatRestsIsToldTheGroundsInShort() {
        window.toggleButton("station-4").click();
        JTable marks = window.table("marks").target();
        Point row = new Point(60, marks.getRowHeight() / 2);
        until("the grounds of the mark", () -> rested(marks, row)
                .filter(tip -> tip.contains("As read") && tip.contains("H7?") && tip.contains("F3"))
                .isPresent());
        DiagramPanel diagram = (DiagramPanel) robot.finder().findByName("diagram");
        Optional<Point> hood = GuiActionRunner.execute(() -> place(diagram, HOOD));
        until("the readings of the hood", () -> rested(diagram, hood.orElseThrow())
                .filter(tip -> tip.contains("3 readings"))
                .isPresent());
        Optional<Point> bare = GuiActionRunner.execute(() -> place(diagram, new ZoneId("roof")));
        assertThat(rested(diagram, bare.orElseThrow()))
                .as("nothing is known of the roof")
                .isEmpty();
    }

    private static Optional<Point> place(DiagramPanel diagram, ZoneId zone) {
        for (int y = 2; y < diagram.getHeight(); y += 4) {
            for (int x = 2; x < diagram.getWidth(); x += 4) {
                if (isHit(diagram, x, y, zone) && isHit(diagram, x + 8, y + 4, zone)) {
                    return Optional.of(new Point(x + 4, y + 2));
                }
            }
        }
        return Optional.empty();
    }

    private static boolean isHit(DiagramPanel diagram, int x, int y, ZoneId zone) {
        return diagram.scene()
                .flatMap(scene -> scene.hit(x, y).flatMap(hit -> hit.zone()))
                .equals(Optional.of(zone));
    }

    @Test
    void aMarkRestsOnItsPhotoAndItsZoneOnReadings() {
        window.toggleButton("station-4").click();
        window.table("marks").selectRows(0);
        robot.pressAndReleaseKeys(KeyEvent.VK_F3);
        until("the grounds of the mark are shown", this::isOpen);
        assertThat(grounds().get(0).text()).contains("H7?");
        until("its photo stands beside", this::isPhotoShown);
        robot.pressAndReleaseKeys(KeyEvent.VK_ESCAPE);
        until("left", () -> !isOpen());

        window.toggleButton("station-2").click();
        robot.pressAndReleaseKeys(KeyEvent.VK_F3);
        until("the grounds of the zone are shown", this::isOpen);
        List<Ground> grounds = grounds();
        assertThat(grounds.get(0).text()).contains("5.1").contains("3 readings");
        assertThat(grounds.get(0).where().rows()).hasSize(3);
        assertThat(grounds).as("each place, the mark and the photo too").hasSizeGreaterThan(5);
        int mark = IntStream.range(0, grounds.size())
                .filter(i -> grounds.get(i).where().isOf(RecordKind.MARKS))
                .findFirst()
                .orElseThrow();
        for (int i = 0; i < mark; i++) {
            robot.pressAndReleaseKeys(KeyEvent.VK_DOWN);
        }
        until("the photo of the mark", this::isPhotoShown);
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        until(
                "Enter goes to the mark",
                () -> !isOpen()
                        && robot.finder()
                                        .findAll(c -> "marks".equals(c.getName()) && c.isShowing())
                                        .size()
                                == 1);
    }
}
