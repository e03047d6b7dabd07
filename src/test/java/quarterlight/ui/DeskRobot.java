package quarterlight.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.awt.GraphicsEnvironment;
import java.awt.Window;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.assertj.swing.core.BasicRobot;
import org.assertj.swing.core.Robot;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.FrameFixture;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;
import org.assertj.swing.timing.Timeout;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.cli.TestPhotos;
import quarterlight.diagram.NominalAreas;
import quarterlight.diagram.file.DiagramRefused;
import quarterlight.diagram.file.VisitDiagram;
import quarterlight.edit.EditRefused;
import quarterlight.edit.fact.FactEdits;
import quarterlight.edit.intake.Intake;
import quarterlight.finish.place.ZoneSizes;
import quarterlight.store.VisitStore;
import quarterlight.table.ZoneTable;
import quarterlight.task.Progress;
import quarterlight.ui.start.SampleVisits;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.VisitRecord;

/** The real window on a small made visit, driven as a user does. Skipped where there is no display. */
public abstract class DeskRobot {
    protected static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-02T10:15:30Z"), ZoneOffset.UTC);
    private static final int PHOTOS = 12;

    @TempDir
    protected Path folder;

    protected Robot robot;
    protected FrameFixture window;
    protected Path visit;
    private EventThreadWatch watch;
    private Thread desk;

    @BeforeEach
    void openWindow() throws Exception {
        assumeFalse(GraphicsEnvironment.isHeadless(), "the robot needs a display");
        visit = folder.resolve("visit");
        make(visit);
        robot = BasicRobot.robotWithNewAwtHierarchy();
        watch = EventThreadWatch.start();
        Desktop desktop = new Desktop(
                CLOCK,
                ZoneTable::load,
                DeskRobot::areas,
                new DesktopPreloader(folder.resolve("settings")),
                samples(),
                folder.resolve("log"));
        Optional<Path> opened = opened();
        desk = new Thread(() -> desktop.open(opened), "desk");
        desk.start();
        window =
                WindowFinder.findFrame("main").withTimeout(60, TimeUnit.SECONDS).using(robot);
        untilInFront();
        opened.ifPresent(path -> untilOpen());
    }

    /** Waits until the keyboard is the window's own, whatever stood on the display before. */
    private void untilInFront() {
        until("the window has the keyboard", () -> {
            boolean active = GuiActionRunner.execute(() -> window.target().isActive());
            if (!active) {
                GuiActionRunner.execute(() -> {
                    window.target().toFront();
                    window.target().requestFocus();
                });
            }
            return active;
        });
    }

    /** Closes whatever the window left open, so that nothing takes the keyboard of the next one. */
    private static void closeAll() {
        GuiActionRunner.execute(() -> Stream.of(Window.getWindows()).forEach(Window::dispose));
        until("no window is left", () -> Stream.of(Window.getWindows()).noneMatch(Window::isShowing));
    }

    /** Waits until a visit stands in the window. */
    protected void untilOpen() {
        until(
                "the visit is open",
                () -> robot.finder()
                                .findAll(c -> "diagram".equals(c.getName()) && c.isShowing())
                                .size()
                        == 1);
    }

    /** The visit with which the window begins; the one that was made unless a test begins with none. */
    protected Optional<Path> opened() {
        return Optional.of(visit);
    }

    /** The sample visits: none, unless a test brings some. */
    protected SampleVisits samples() {
        return new SampleVisits() {
            @Override
            public Path folder() {
                return folder.resolve("samples");
            }

            @Override
            public List<Path> make(Progress progress) {
                return List.of();
            }
        };
    }

    @AfterEach
    void closeWindow() throws InterruptedException {
        if (robot == null || window == null) {
            return;
        }
        try {
            GuiActionRunner.execute(() -> Stream.of(Window.getOwnerlessWindows())
                    .filter(one -> one != window.target())
                    .forEach(Window::dispose));
            window.close();
            desk.join(20_000);
        } finally {
            closeAll();
            robot.cleanUp();
            watch.close();
        }
        assertThat(watch.caught()).as("places where the event thread waited").isEmpty();
        assertThat(desk.isAlive()).as("the window is closed").isFalse();
    }

    /** Makes the visit; twelve photos a half minute apart unless a test makes another. */
    protected void make(Path path) throws Exception {
        try (VisitStore store = VisitStore.create(path, coupe(), CLOCK)) {
            for (int i = 0; i < PHOTOS; i++) {
                TestPhotos.write(
                        folder.resolve("card/IMG_" + (100 + i) + ".JPG"),
                        i,
                        "2026:02:28 10:%02d:%02d".formatted(i / 2, i % 2 * 30));
            }
            new Intake(store, CLOCK, (photo, jpeg) -> {}).run(List.of(folder.resolve("card")), Progress.NONE);
        }
    }

    /** The facts of an invented car, its clocks on UTC. */
    protected static VisitFacts coupe() throws EditRefused {
        return new FactEdits(ZoneTable.load())
                .start(Map.of("car", "Tamarisk", "style", "coupe", "timezone", "UTC"), ZoneOffset.UTC);
    }

    private static ZoneSizes areas(Path visit, VisitFacts facts) {
        try {
            return NominalAreas.sizes(VisitDiagram.of(visit, facts), facts.car().dimensions());
        } catch (DiagramRefused e) {
            throw new IllegalStateException(e);
        }
    }

    /** What the visit holds on the disk at this moment. */
    protected VisitRecord held() {
        try (VisitStore store = VisitStore.openForReading(visit)) {
            return store.read();
        } catch (quarterlight.store.problem.VisitProblem e) {
            throw new IllegalStateException(e);
        }
    }

    /** Presses a key while the control key is down. */
    protected void withControl(int key) {
        robot.pressKey(java.awt.event.KeyEvent.VK_CONTROL);
        try {
            robot.pressAndReleaseKeys(key);
        } finally {
            robot.releaseKey(java.awt.event.KeyEvent.VK_CONTROL);
        }
    }

    /** Waits until something holds, at most half a minute. */
    protected static void until(String what, BooleanSupplier holds) {
        Pause.pause(
                new Condition(what) {
                    @Override
                    public boolean test() {
                        return holds.getAsBoolean();
                    }
                },
                Timeout.timeout(30, TimeUnit.SECONDS));
    }
}
