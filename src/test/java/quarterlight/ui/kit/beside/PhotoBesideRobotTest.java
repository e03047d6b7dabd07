package quarterlight.ui.kit.beside;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import quarterlight.car.ZoneId;
import quarterlight.edit.row.RowEdits;
import quarterlight.store.VisitStore;
import quarterlight.ui.DeskRobot;
import quarterlight.ui.kit.view.PhotoCanvas;
import quarterlight.ui.kit.view.Tone;
import quarterlight.visit.mark.Mark;
import quarterlight.visit.mark.MarkKind;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.row.RecordKind;

/** The photo of a mark stands beside its fields: by keys under a loupe, in other tones, turned, beside another view; never stored. */
class PhotoBesideRobotTest extends DeskRobot {
    private PhotoId first;
    private PhotoId second;

    @Override
    protected void make(Path path) throws Exception {
        super.make(path);
        try (VisitStore store = VisitStore.openForEditing(path, CLOCK)) {
            first = store.read().photos().get(3).id();
            second = store.read().photos().get(4).id();
            RowEdits edits = new RowEdits(store);
            edits.add(RecordKind.MARKS, List.of(stamp("H71?", first), stamp("H712", second)));
            edits.add(
                    RecordKind.PINS,
                    List.of(new Pin(
                            first,
                            new ZoneId("firewall"),
                            java.util.OptionalDouble.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty())));
        }
    }

    private static Mark stamp(String text, PhotoId photo) {
        return new Mark(
                "Body stamp",
                MarkKind.STAMP,
                text,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(new ZoneId("firewall")),
                Optional.empty(),
                Optional.of(photo),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private Optional<PhotoCanvas> canvas(String name) {
        return robot.finder().findAll(c -> name.equals(c.getName()) && c.isShowing()).stream()
                .map(PhotoCanvas.class::cast)
                .findFirst();
    }

    private Optional<PhotoId> shown(String name) {
        return GuiActionRunner.execute(
                () -> canvas(name).flatMap(PhotoCanvas::photo).map(photo -> photo.id()));
    }

    private void withAlt(int key) {
        robot.pressKey(KeyEvent.VK_ALT);
        robot.pressAndReleaseKeys(key);
        robot.releaseKey(KeyEvent.VK_ALT);
    }

    @Test
    void aStampIsReadOffItsPhotoWithoutLeavingTheField() throws Exception {
        byte[] before = original();
        window.toggleButton("station-4").click();
        window.table("marks").selectRows(0);
        until("the photo of the mark stands beside it", () -> shown("beside").equals(Optional.of(first)));
        Component text = window.textBox("mark-text").target();
        robot.focusAndWaitForFocusGain(text);

        withAlt(KeyEvent.VK_L);
        until("the loupe lies on it", () -> canvas("beside").orElseThrow().isLoupe());
        withAlt(KeyEvent.VK_C);
        withAlt(KeyEvent.VK_C);
        until("edges stand out", () -> canvas("beside").orElseThrow().tone() == Tone.EDGES);
        withAlt(KeyEvent.VK_B);
        until("the other view of the stamp stands beside it", () -> shown("beside-second")
                .equals(Optional.of(second)));
        withAlt(KeyEvent.VK_R);
        assertThat(window.textBox("mark-text").text())
                .as("no key got into the field")
                .isEqualTo("H71?");
        assertThat(text.hasFocus()).isTrue();
        withAlt(KeyEvent.VK_B);
        until("it is put away again", () -> canvas("beside-second").isEmpty());
        assertThat(original()).as("the original").isEqualTo(before);
    }

    private byte[] original() throws Exception {
        String name = held().photos().get(3).file().name();
        try (var files = Files.list(visit.resolve("originals"))) {
            return Files.readAllBytes(
                    files.filter(f -> f.toString().endsWith(name)).findFirst().orElseThrow());
        }
    }

    @Test
    void aNewMarkBeginsWithThePhotoInHandAndItsZone() {
        window.toggleButton("station-4").click();
        window.table("marks").selectRows(0);
        until("the photo is in hand", () -> shown("beside").equals(Optional.of(first)));
        withControl(KeyEvent.VK_M);
        robot.waitForIdle();
        robot.enterText("Cowl tag");
        robot.focusAndWaitForFocusGain(window.textBox("mark-text").target());
        robot.enterText("A7");
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        until("it is kept", () -> held().marks().size() == 3);
        Mark mark = held().marks().get(2).value();
        assertThat(mark.photo()).contains(first);
        assertThat(mark.zone()).contains(new ZoneId("firewall"));
    }

    @Test
    void stepsAndIsPutAwayByKeys() {
        window.toggleButton("station-5").click();
        until("the photo in hand stands beside the notes", () -> shown("beside").isPresent());
        Optional<PhotoId> one = shown("beside");
        withAlt(KeyEvent.VK_PAGE_DOWN);
        until("the next one", () -> !shown("beside").equals(one));
        withAlt(KeyEvent.VK_PAGE_UP);
        until("and back", () -> shown("beside").equals(one));
        robot.pressAndReleaseKeys(KeyEvent.VK_F12);
        until("put away", () -> canvas("beside").isEmpty());
        robot.pressAndReleaseKeys(KeyEvent.VK_F12);
        until("there again", () -> canvas("beside").isPresent());
    }
}
