package quarterlight.ui.kit.visit;

import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import quarterlight.capture.CorrectedTimes;
import quarterlight.car.ZoneId;
import quarterlight.store.VisitStore;
import quarterlight.store.folder.VisitFolder;
import quarterlight.store.problem.VisitProblem;
import quarterlight.task.Threads;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.PhotoId;

/** The one thread on which the window edits a visit, and on which the visit is read again after every change. */
public final class StoreThread {
    private static final System.Logger LOG = System.getLogger(StoreThread.class.getName());

    /**
     * What the visit holds after a change.
     *
     * @param number rises with every reading
     */
    public record State(
            long number,
            VisitRecord visit,
            CorrectedTimes times,
            Map<PhotoId, Set<ZoneId>> pins,
            Optional<String> undo,
            Optional<String> redo) {
        Set<ZoneId> pinsOf(PhotoId photo) {
            return pins.getOrDefault(photo, Set.of());
        }
    }

    private final ExecutorService thread = Threads.inOrder("quarterlight-store");
    private volatile Optional<Thread> worker = Optional.empty();
    private final VisitStore store;
    private final AtomicBoolean readingQueued = new AtomicBoolean();
    private volatile Consumer<State> listener = state -> {};
    private Optional<State> last = Optional.empty();
    private long number;
    private boolean editing;
    private boolean changed;

    public StoreThread(VisitStore store) {
        this.store = Objects.requireNonNull(store, "store");
        store.onChange(change -> changed());
    }

    VisitStore store() {
        return store;
    }

    VisitFolder folder() {
        return store.folder();
    }

    boolean isEditable() {
        return store.isEditable();
    }

    /** Told of changes that come from elsewhere than {@link #edit}, on the thread of the store. */
    void onState(Consumer<State> told) {
        listener = told;
    }

    /**
     * Reads the visit on the calling thread, which is not the event thread; used once, at opening.
     *
     * @param early told the facts before the rest is read
     */
    State first(Consumer<VisitFacts> early) throws VisitProblem {
        return read(early);
    }

    public <T> void edit(
            OpenVisit.StoreWork<T> work, BiConsumer<T, Optional<State>> done, Consumer<? super Exception> failed) {
        thread.execute(() -> {
            T result;
            Optional<State> fresh = Optional.empty();
            try {
                worker = Optional.of(Thread.currentThread());
                editing = true;
                changed = false;
                result = work.run(store);
                if (changed) {
                    fresh = Optional.of(read(facts -> {}));
                }
            } catch (Exception e) {
                failed.accept(e);
                return;
            } finally {
                editing = false;
            }
            done.accept(result, fresh);
        });
    }

    private void changed() {
        if (editing && worker.equals(Optional.of(Thread.currentThread()))) {
            changed = true;
        } else if (readingQueued.compareAndSet(false, true)) {
            thread.execute(() -> {
                readingQueued.set(false);
                try {
                    listener.accept(read(facts -> {}));
                } catch (VisitProblem e) {
                    LOG.log(System.Logger.Level.WARNING, "the visit cannot be read after a change", e);
                }
            });
        }
    }

    private State read(Consumer<VisitFacts> early) throws VisitProblem {
        VisitRecord visit = store.read(early);
        number++;
        Map<PhotoId, Set<ZoneId>> pins = visit.pins().stream()
                .map(row -> row.value())
                .collect(Collectors.groupingBy(
                        pin -> pin.photo(),
                        Collectors.mapping(pin -> pin.zone(), Collectors.toCollection(LinkedHashSet::new))));
        last = Optional.of(new State(number, visit, times(visit), pins, store.undoLabel(), store.redoLabel()));
        return last.get();
    }

    /** Times are worked out anew only if photos or clocks are others than at the last reading. */
    private CorrectedTimes times(VisitRecord visit) {
        return last.filter(state -> state.visit().photos().equals(visit.photos())
                        && state.visit().clocks().equals(visit.clocks())
                        && state.visit().facts().timezone().equals(visit.facts().timezone()))
                .map(State::times)
                .orElseGet(() -> CorrectedTimes.of(visit));
    }

    void close(Runnable closed) {
        thread.execute(() -> {
            store.close();
            closed.run();
        });
        thread.shutdown();
    }
}
