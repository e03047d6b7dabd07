package quarterlight.ui.photos;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import javax.swing.JComboBox;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import quarterlight.cli.TestPhotos;
import quarterlight.edit.intake.Intake;
import quarterlight.store.VisitStore;
import quarterlight.task.Progress;
import quarterlight.ui.DeskRobot;
import quarterlight.ui.photos.list.PhotoScope;
import quarterlight.visit.photo.Photo;

/** Weeding out near-duplicates by Delete and Enter: the filter holds, one of each pair stays, and with nothing shown nothing acts. */
class AlikeRobotTest extends DeskRobot {
    private static final int SUBJECTS = 5;
    private static final int PAIRS = 2;

    /** Five subjects; of the first two there are two photos each, a few seconds apart. */
    @Override
    protected void make(Path path) throws Exception {
        for (int subject = 0; subject < SUBJECTS; subject++) {
            for (int shot = 0; shot < (subject < PAIRS ? 2 : 1); shot++) {
                TestPhotos.write(
                        folder.resolve("card/S" + subject + "_" + shot + ".JPG"),
                        blocks(subject, shot),
                        "2026:02:28 10:%02d:%02d".formatted(subject, 5 * shot));
            }
        }
        try (VisitStore store = VisitStore.create(path, coupe(), CLOCK)) {
            new Intake(store, CLOCK, (photo, jpeg) -> {}).run(List.of(folder.resolve("card")), Progress.NONE);
        }
    }

    /** Blocks of gray, other ones for each subject; shots of one subject differ by a small spot. */
    private static BufferedImage blocks(int subject, int shot) {
        Random random = new Random(41L + subject);
        BufferedImage picture = new BufferedImage(360, 270, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = picture.createGraphics();
        for (int y = 0; y < 270; y += 30) {
            for (int x = 0; x < 360; x += 40) {
                g.setColor(Color.getHSBColor(0, 0, random.nextFloat()));
                g.fillRect(x, y, 40, 30);
            }
        }
        g.setColor(Color.GRAY);
        g.fillRect(100, 100, 4 * shot, 4);
        g.dispose();
        return picture;
    }

    private JComboBox<?> showing() {
        return (JComboBox<?>) robot.finder().findByName("photos-showing", true);
    }

    private boolean isCounted(int alike) {
        return GuiActionRunner.execute(() -> String.valueOf(showing().getItemAt(PhotoScope.ALIKE.ordinal())))
                .endsWith(" " + alike);
    }

    private List<String> aside() {
        return held().photos().stream()
                .filter(photo -> photo.setAside().isPresent())
                .map(Photo::file)
                .map(file -> file.name())
                .toList();
    }

    private void deleteAndEnter() {
        robot.pressAndReleaseKeys(KeyEvent.VK_DELETE);
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        robot.waitForIdle();
    }

    @Test
    void oneOfEachPairStaysAndWithNothingShownNothingActs() {
        until("the pairs are found", () -> isCounted(2 * PAIRS));
        GuiActionRunner.execute(() -> showing().setSelectedIndex(PhotoScope.ALIKE.ordinal()));
        Component sheet = robot.finder().findByName("photos-sheet");
        robot.focusAndWaitForFocusGain(sheet);
        robot.pressAndReleaseKeys(KeyEvent.VK_HOME);
        deleteAndEnter();
        until("one of the first pair is set aside", () -> aside().size() == 1);
        deleteAndEnter();
        until("one of the second pair too", () -> aside().size() == 2);
        assertThat(aside()).containsExactlyInAnyOrder("S0_0.JPG", "S1_0.JPG");
        until("none is like another any more", () -> isCounted(0));
        deleteAndEnter();
        Component diagram = robot.finder().findByName("diagram");
        for (int x = 1; x < 10; x++) {
            robot.click(
                    diagram,
                    new Point(diagram.getWidth() * x / 10, diagram.getHeight() / 5),
                    MouseButton.LEFT_BUTTON,
                    1);
        }
        robot.waitForIdle();
        assertThat(aside()).as("nothing was in hand").hasSize(2);
        assertThat(held().pins()).as("nothing unseen is pinned").isEmpty();
    }
}
