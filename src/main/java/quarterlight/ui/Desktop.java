package quarterlight.ui;

import java.awt.GraphicsEnvironment;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.SwingUtilities;
import quarterlight.car.ZoneCatalog;
import quarterlight.diagram.ink.Ramp;
import quarterlight.finish.place.ZoneSizes;
import quarterlight.store.folder.VisitFile;
import quarterlight.task.Threads;
import quarterlight.ui.dialog.MainFrame;
import quarterlight.ui.dialog.ProblemDialogs;
import quarterlight.ui.kit.SwingJobRunner;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.visit.VisitReading;
import quarterlight.ui.kit.widget.ProgressLine;
import quarterlight.ui.start.SampleVisits;
import quarterlight.visit.VisitFacts;

/** Opens the window and waits until it is closed. The visit is read, the typeface and the tables are loaded and the window is built side by side. */
public final class Desktop {
    private static final System.Logger LOG = System.getLogger(Desktop.class.getName());
    private static final int WORKERS = 3;

    private final Clock clock;
    private final Supplier<ZoneCatalog> zones;
    private final BiFunction<Path, VisitFacts, ZoneSizes> areas;
    private final DesktopPreloader readiness;
    private final SampleVisits samples;
    private final Path log;

    /**
     * @param areas nominal areas of the zones of a visit in a folder
     * @param readiness begun or not
     * @param samples the sample visits that come with the program
     * @param log where faults of the program are written
     */
    public Desktop(
            Clock clock,
            Supplier<ZoneCatalog> zones,
            BiFunction<Path, VisitFacts, ZoneSizes> areas,
            DesktopPreloader readiness,
            SampleVisits samples,
            Path log) {
        this.clock = clock;
        this.zones = zones;
        this.areas = areas;
        this.readiness = readiness;
        this.samples = samples;
        this.log = log;
    }

    /** Opens the window, with a visit if one is given, and waits until it is closed. Returns false at once if there is no display. */
    public boolean open(Optional<Path> visit) {
        return open(visit, window -> {});
    }

    /** Opens the window with a visit, shows each station once and closes it. Returns false at once if there is no display. */
    public boolean rehearse(Path visit) {
        return open(Optional.of(visit), window -> new ScreenWarmup(window).begin());
    }

    private boolean open(Optional<Path> visit, Consumer<MainWindow> then) {
        if (GraphicsEnvironment.isHeadless()) {
            return false;
        }
        Optional<VisitReading> reading = visit.map(folder ->
                VisitReading.of(folder, clock, log.toAbsolutePath().getParent()).begin());
        CountDownLatch closed = new CountDownLatch(1);
        DesktopPreloader.Ready ready;
        try {
            ready = readiness.await();
        } catch (java.awt.AWTError e) {
            LOG.log(System.Logger.Level.WARNING, "no display", e);
            reading.ifPresent(VisitReading::giveUp);
            return false;
        }
        ZoneCatalog catalog = zones.get();
        Ramp ramp = Ramp.load();
        SwingUtilities.invokeLater(() -> start(ready, catalog, ramp, reading, closed, then));
        await(closed);
        ready.writer().shutdown();
        return true;
    }

    private void start(
            DesktopPreloader.Ready ready,
            ZoneCatalog catalog,
            Ramp ramp,
            Optional<VisitReading> visit,
            CountDownLatch closed,
            Consumer<MainWindow> then) {
        ready.language().inHandUntilClosed();
        Texts texts = Texts.load();
        MainFrame frame = new MainFrame(texts, closed::countDown);
        ProgressLine progress = new ProgressLine(texts);
        ExecutorService workers = Threads.pool("quarterlight-worker", WORKERS);
        ProblemDialogs problems = new ProblemDialogs(texts, frame, log);
        Thread.setDefaultUncaughtExceptionHandler(
                (thread, failure) -> SwingUtilities.invokeLater(() -> problems.failed(failure)));
        UiContext parts = new UiContext(
                texts,
                clock,
                catalog,
                areas,
                ready.settings(),
                new SwingJobRunner(workers, progress),
                problems,
                ramp,
                ready.measure());
        MainWindow window = new MainWindow(parts, frame, progress, samples);
        if (visit.isEmpty()) {
            window.startPage();
        }
        window.show();
        openWhatTheFileManagerNames(window);
        visit.ifPresent(window::open);
        then.accept(window);
    }

    /** On macOS a file is not handed over with the call but told to the program that runs; other systems start it anew. */
    private static void openWhatTheFileManagerNames(MainWindow window) {
        if (!System.getProperty("os.name").startsWith("Mac")) {
            return;
        }
        java.awt.Desktop system = java.awt.Desktop.getDesktop();
        if (system.isSupported(java.awt.Desktop.Action.APP_OPEN_FILE)) {
            system.setOpenFileHandler(named -> named.getFiles().stream()
                    .findFirst()
                    .ifPresent(file -> window.open(VisitFile.folderOf(file.toPath()))));
        }
    }

    private static void await(CountDownLatch closed) {
        try {
            closed.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
