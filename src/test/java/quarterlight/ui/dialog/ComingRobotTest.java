package quarterlight.ui.dialog;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.datatransfer.Transferable;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.SwingUtilities;
import javax.swing.TransferHandler;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import quarterlight.cli.TestPhotos;
import quarterlight.ui.DeskRobot;
import quarterlight.ui.DroppedFiles;
import quarterlight.ui.kit.Texts;
import quarterlight.visit.photo.PhotoId;

/** A folder dropped on the window: the sheet shows all its photos at once while they are copied, and pinning goes on meanwhile. */
class ComingRobotTest extends DeskRobot {
    private static final int HELD = 12;
    private static final int MORE = 400;
    private static final Pattern ALL = Pattern.compile("All photos\\s+(\\d+)");

    private int shown() {
        return GuiActionRunner.execute(
                () -> robot.finder().findAll(c -> c instanceof JComboBox<?> && c.isShowing()).stream()
                        .map(c -> (JComboBox<?>) c)
                        .flatMap(box -> box.getItemCount() == 0
                                ? java.util.stream.Stream.of()
                                : java.util.stream.Stream.of(String.valueOf(box.getItemAt(0))))
                        .map(ALL::matcher)
                        .filter(Matcher::matches)
                        .mapToInt(m -> Integer.parseInt(m.group(1)))
                        .findFirst()
                        .orElse(0));
    }

    private String foot() {
        return GuiActionRunner.execute(() -> ((JLabel) robot.finder().findByName("foot-said", true)).getText());
    }

    private void drop(Path path) throws Exception {
        Transferable files = new DroppedFiles(List.of(path.toFile()));
        SwingUtilities.invokeAndWait(() -> {
            JComponent target = (JComponent) robot.finder()
                    .find(c -> c instanceof JComponent one && one.getTransferHandler() instanceof FileDrop);
            target.getTransferHandler().importData(new TransferHandler.TransferSupport(target, files));
        });
    }

    @Test
    void theSheetIsCompleteBeforeThePhotosAreInAndPinningGoesOn() throws Exception {
        Path more = folder.resolve("more");
        for (int i = 0; i < MORE; i++) {
            TestPhotos.write(
                    more.resolve("P_%04d.JPG".formatted(i)),
                    100 + i,
                    "2026:02:28 11:%02d:%02d".formatted(i / 60, i % 60));
        }
        AtomicInteger heldWhenShown = new AtomicInteger();
        drop(more);
        until("the sheet shows them all", () -> {
            boolean all = shown() == HELD + MORE;
            heldWhenShown.set(held().photos().size());
            return all;
        });
        assertThat(heldWhenShown.get()).as("held when all are shown").isLessThan(HELD + MORE);

        robot.focusAndWaitForFocusGain(robot.finder().findByName("photos-sheet"));
        robot.pressAndReleaseKeys(KeyEvent.VK_HOME);
        robot.enterText("hood");
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        until("a photo is pinned meanwhile", () -> held().pins().size() == 1);
        assertThat(held().pins().get(0).value().photo()).isGreaterThan(new PhotoId(0));

        until("all are taken in", () -> held().photos().size() == HELD + MORE);
        String done = Texts.load().get("take.done", MORE, 0, 0);
        until("the foot says so, and no dialog takes the keys", () -> done.equals(foot()));
        assertThat(shown()).as("none is shown twice").isEqualTo(HELD + MORE);
    }
}
