package quarterlight.ui.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javax.swing.JButton;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import quarterlight.file.Leftovers;
import quarterlight.photo.decode.Pictures;
import quarterlight.store.folder.ThumbnailStore;
import quarterlight.store.folder.VisitFolder;
import quarterlight.task.Progress;
import quarterlight.ui.DeskRobot;

/** The first page: sample visits are made and opened by one click, visits opened of late stand there by car and picture. */
class StartPageRobotTest extends DeskRobot {
    private final CountDownLatch letGo = new CountDownLatch(1);
    private Path second;

    @Override
    protected Optional<Path> opened() {
        return Optional.empty();
    }

    /** Two visits that take a while, as the real ones do. */
    @Override
    protected SampleVisits samples() {
        second = folder.resolve("samples/second");
        return new SampleVisits() {
            @Override
            public Path folder() {
                return folder.resolve("samples");
            }

            @Override
            public List<Path> make(Progress progress) throws Exception {
                progress.report(1, 2, "photo 1 of 2");
                while (!letGo.await(20, TimeUnit.MILLISECONDS)) {
                    progress.checkCancelled();
                }
                Files.createDirectories(folder());
                StartPageRobotTest.this.make(second);
                return List.of(visit, second);
            }
        };
    }

    private boolean isShowing(String name) {
        return !robot.finder()
                .findAll(c -> name.equals(c.getName()) && c.isShowing())
                .isEmpty();
    }

    private JButton recent(int number) {
        return (JButton) robot.finder().findByName("recent-" + number, true);
    }

    private int pictures() {
        return GuiActionRunner.execute(
                () -> robot.finder().findAll(c -> c instanceof RecentVisits && c.isShowing()).stream()
                        .mapToInt(c -> ((RecentVisits) c).shown())
                        .sum());
    }

    /** Whether the small picture of the first photo, by which the car is known, is kept in a visit. */
    private boolean isPictured(Path path) {
        if (!Files.isRegularFile(path.resolve("thumbs.db"))) {
            return false;
        }
        try (ThumbnailStore small = ThumbnailStore.open(new VisitFolder(path))) {
            return small.get(held().photos().get(0).file().sha256(), Pictures.THUMBNAIL)
                    .isPresent();
        }
    }

    @Test
    void theSampleVisitsAreMadeAndOpenedAndStandThereByCarAndPicture() throws Exception {
        assertThat(isShowing("recent-1")).isFalse();
        window.button("start-samples").click();
        until("how far it is, and how to stop it", () -> isShowing("progress-cancel"));
        window.button("start-samples").requireDisabled();
        letGo.countDown();
        untilOpen();
        until("the first of them is open", () -> window.target().getTitle().contains("Tamarisk"));
        until("its small pictures are kept", () -> isPictured(visit));
        withControl(KeyEvent.VK_W);
        until("both stand on the first page", () -> isShowing("recent-2"));
        assertThat(recent(1).getAccessibleContext().getAccessibleName()).isEqualTo("Tamarisk");
        assertThat(recent(2).getToolTipText()).isEqualTo(second.toString());
        until("the one that was shown has its picture", () -> pictures() == 1);
        window.button("recent-2").click();
        untilOpen();
        until("the other is open too", () -> isPictured(second));
        withControl(KeyEvent.VK_W);
        until("both have their pictures", () -> pictures() == 2);
        assertThat(recent(1).getToolTipText()).as("the last one opened").isEqualTo(second.toString());

        window.button("recent-2").click();
        untilOpen();
        Leftovers.delete(second);
        withControl(KeyEvent.VK_W);
        until("the first page is back", () -> isShowing("recent-2"));
        until(
                "what is gone says so",
                () -> !recent(2).isEnabled() && recent(2).getToolTipText().contains("not there any more"));
        assertThat(recent(1).isEnabled()).isTrue();
    }

    @Test
    void makingThemIsBrokenOffWithoutATrace() {
        window.button("start-samples").click();
        until("it can be stopped", () -> isShowing("progress-cancel"));
        window.button("progress-cancel").click();
        until("it can be begun again", () -> window.button("start-samples").isEnabled());
        assertThat(isShowing("diagram")).isFalse();
        assertThat(second).doesNotExist();
        assertThat(isShowing("start-new")).isTrue();
    }
}
