package quarterlight.ui.kit.visit;

import java.nio.file.Path;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import quarterlight.photo.worker.DecodingWorkers;
import quarterlight.photo.worker.WorkerLimits;
import quarterlight.ui.kit.UiContext;
import quarterlight.visit.VisitFacts;

/** Opens and makes visits for the window, in the background. Event thread only. */
public final class VisitOpener {
    /** What can wait waits no longer than this for the small pictures. */
    private static final int MAX_WAIT_MS = 400;

    /** So long small pictures that have come take until they stand on the screen. */
    private static final int SHOW_MS = 80;

    private final UiContext parts;

    public VisitOpener(UiContext parts) {
        this.parts = parts;
    }

    /** Opens a visit, for reading only if another process edits it. */
    public void open(Path folder, Consumer<OpenVisit> opened) {
        open(VisitReading.of(folder, parts.clock(), parts.settings().folder()), opened);
    }

    /** Makes a visit and opens it. */
    public void create(Path folder, VisitFacts facts, Consumer<OpenVisit> opened) {
        open(VisitReading.ofNew(folder, facts, parts.clock(), parts.settings().folder()), opened);
    }

    /** Opens a visit whose reading may have begun already. */
    public void open(VisitReading reading, Consumer<OpenVisit> opened) {
        open(reading, opened, parts.problems()::failed);
    }

    /** @param failed told why it cannot be opened */
    public void open(VisitReading reading, Consumer<OpenVisit> opened, Consumer<Throwable> failed) {
        parts.jobs()
                .start(
                        parts.texts()
                                .get(
                                        "visit.opening",
                                        String.valueOf(reading.folder().getFileName())),
                        progress -> reading.await(),
                        ready -> show(ready, opened),
                        failed);
    }

    /** What {@code opened} puts into the window is painted, with its small pictures if they come soon, before what can wait begins. */
    private void show(VisitReading.Ready ready, Consumer<OpenVisit> opened) {
        ready.report().ifPresent(report -> parts.problems().tell(report.text()));
        OpenVisit visit = new OpenVisit(
                parts,
                ready.thread(),
                new PhotoImages(ready.thread().folder(), new DecodingWorkers(WorkerLimits.USUAL, WorkerLimits.WHOLE)),
                ready.state(),
                ready.drawing());
        opened.accept(visit);
        SwingUtilities.invokeLater(() -> visit.images().onceStill(() -> after(SHOW_MS, visit::painted)));
        after(MAX_WAIT_MS, visit::painted);
    }

    private static void after(int ms, Runnable work) {
        Timer once = new Timer(ms, tick -> work.run());
        once.setRepeats(false);
        once.start();
    }
}
