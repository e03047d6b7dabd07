package quarterlight.ui.kit.visit;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.atomic.AtomicReference;
import javax.swing.SwingUtilities;
import quarterlight.store.TakeoverReport;
import quarterlight.store.VisitOpening;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitLocked;
import quarterlight.store.problem.VisitProblem;
import quarterlight.task.Threads;
import quarterlight.visit.VisitFacts;

/**
 * A visit on its way from the disk to the window. It may begin before there is a window, since it needs none. Whoever begins one takes what
 * it gives, or gives it up.
 */
public final class VisitReading {
    private static final System.Logger LOG = System.getLogger(VisitReading.class.getName());

    /** What was read. */
    record Ready(
            StoreThread thread, StoreThread.State state, OpenVisit.Drawing drawing, Optional<TakeoverReport> report) {}

    private interface Opening {
        VisitStore open(VisitOpening opening) throws VisitProblem;
    }

    private final Path folder;
    private final FutureTask<Ready> work;

    private VisitReading(Path folder, Callable<Ready> work) {
        this.folder = folder;
        this.work = new FutureTask<>(work);
    }

    /**
     * Of a visit that is there, for reading only if another process edits it.
     *
     * @param settings the folder that keeps the key by which this computer knows its own visits
     */
    public static VisitReading of(Path folder, Clock clock, Path settings) {
        return new VisitReading(
                folder,
                () -> ready(clock, settings, opening -> {
                    try {
                        return opening.forEditing(folder);
                    } catch (VisitLocked e) {
                        return opening.forReading(folder);
                    }
                }));
    }

    /** Of a visit that is made first. */
    static VisitReading ofNew(Path folder, VisitFacts facts, Clock clock, Path settings) {
        return new VisitReading(folder, () -> ready(clock, settings, opening -> opening.create(folder, facts)));
    }

    /** Begins on a thread of its own. */
    public VisitReading begin() {
        Threads.start("quarterlight-opening", work);
        return this;
    }

    Path folder() {
        return folder;
    }

    /** Waits for what is read; reads it on the calling thread if nobody began. Not on the event thread. */
    Ready await() throws Exception {
        work.run();
        return result(work);
    }

    /** Closes what is read, for want of a window. Not on the event thread. */
    public void giveUp() {
        try {
            await().thread().store().close();
        } catch (Exception e) {
            LOG.log(System.Logger.Level.WARNING, "the visit " + folder + " could not be read", e);
        }
    }

    /** The guard of the store: the window must not wait for the disk. */
    private static void refuseEventThread() {
        if (SwingUtilities.isEventDispatchThread()) {
            throw new IllegalStateException("the store is used on the event thread");
        }
    }

    private static Ready ready(Clock clock, Path settings, Opening way) throws Exception {
        AtomicReference<TakeoverReport> report = new AtomicReference<>();
        VisitStore store = way.open(VisitOpening.by(clock)
                .onThisComputer(settings)
                .telling(report::set)
                .guardedBy(VisitReading::refuseEventThread));
        try {
            AtomicReference<FutureTask<OpenVisit.Drawing>> drawing = new AtomicReference<>();
            StoreThread thread = new StoreThread(store);
            StoreThread.State state = thread.first(facts -> {
                drawing.set(new FutureTask<>(
                        () -> DrawingOf.visitSoon(store.folder().root(), facts)));
                Threads.start("quarterlight-drawing", drawing.get());
            });
            return new Ready(thread, state, result(drawing.get()), Optional.ofNullable(report.get()));
        } catch (Exception e) {
            store.close();
            throw e;
        }
    }

    private static <T> T result(FutureTask<T> work) throws Exception {
        try {
            return work.get();
        } catch (ExecutionException e) {
            throw e.getCause() instanceof Exception cause ? cause : e;
        }
    }
}
