package quarterlight.ui.kit.visit;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import quarterlight.capture.CorrectedTimes;
import quarterlight.car.ZoneId;
import quarterlight.coverage.ZoneCoverage;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.ZonePlaces;
import quarterlight.findings.Findings;
import quarterlight.findings.Measured;
import quarterlight.photo.intake.FilePreview;
import quarterlight.store.VisitStore;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.Listeners;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.place.ChangedRows;
import quarterlight.ui.kit.place.Subject;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Pin;

/**
 * The visit at hand, as all screens see it: what it holds, what is worked out of it, what is selected. Edits run on the thread of the
 * store; what they changed arrives here on the event thread. Event thread only, save where said.
 */
public final class OpenVisit {
    /** Work on the store, on its thread. */
    @FunctionalInterface
    public interface StoreWork<T> {
        T run(VisitStore store) throws Exception;
    }

    /** What waits for the values on the drawing waits no longer than this. */
    private static final int VALUES_MS = 2_000;

    private final UiContext parts;
    private final StoreThread thread;
    private final PhotoImages images;
    private final Selection selection = new Selection();
    private final Listeners visitListeners = new Listeners();
    private final Listeners measuredListeners = new Listeners();
    private final Listeners findingsListeners = new Listeners();
    private final Listeners underWayListeners = new Listeners();
    private final List<List<Pin>> underWay = new ArrayList<>();
    private final FindingsWork findingsWork;
    private Consumer<ChangedRows> stepped = changed -> {};
    private Consumer<Subject> asked = subject -> {};
    private Function<Subject, Optional<String>> glanced = subject -> Optional.empty();
    private StoreThread.State state;
    private Drawing drawing;
    private Optional<Measured> measured = Optional.empty();
    private Optional<Findings> findings = Optional.empty();
    private List<FilePreview> coming = List.of();
    private List<ZoneCoverage> coverage = List.of();
    private Optional<List<Runnable>> waiting = Optional.of(new ArrayList<>());
    private Optional<List<Runnable>> later = Optional.of(new ArrayList<>());

    /** The diagram of the car and the middles of its zones. */
    public record Drawing(BodyDiagram diagram, ZonePlaces places) {}

    OpenVisit(UiContext parts, StoreThread thread, PhotoImages images, StoreThread.State state, Drawing drawing) {
        this.parts = Objects.requireNonNull(parts, "parts");
        this.thread = thread;
        this.images = images;
        this.state = state;
        this.drawing = drawing;
        this.findingsWork = new FindingsWork(
                parts, thread.folder().root(), this::measuredArrived, this::findingsArrived, this::notWorkedOut);
        thread.onState(fresh -> SwingUtilities.invokeLater(() -> arrived(fresh)));
        afterPainting(() -> findingsWork.request(this.state.visit()));
    }

    /** Does what the first picture of the visit does not need: once that is painted, with its small pictures if they come soon, or at once if it has been. */
    public void afterPainting(Runnable work) {
        waiting.ifPresentOrElse(list -> list.add(work), work);
    }

    /** Does what the values on the drawing go before: once they stand there, or at once if they do. */
    public void afterValues(Runnable work) {
        later.ifPresentOrElse(list -> list.add(work), work);
    }

    /** The values stand on the drawing, or nobody shows them. */
    public void valuesStand() {
        List<Runnable> begin = later.orElse(List.of());
        later = Optional.empty();
        begin.forEach(Runnable::run);
    }

    /** The visit stands in the window; what waited for that begins, unless the visit was closed meanwhile. */
    void painted() {
        List<Runnable> begin = waiting.orElse(List.of());
        waiting = Optional.empty();
        begin.forEach(Runnable::run);
    }

    public Path folder() {
        return thread.folder().root();
    }

    public VisitRecord visit() {
        return state.visit();
    }

    public CorrectedTimes times() {
        return state.times();
    }

    /** What is known before anything was judged; empty before the visit was read through. */
    public Optional<Measured> measured() {
        return measured;
    }

    /** What is worked out of the visit; of an earlier state while the work on the last change goes on, empty before the first is done. */
    public Optional<Findings> findings() {
        return findings;
    }

    /** How far the zones are covered, in the order of the walk; empty before it was worked out. Told with the findings. */
    public List<ZoneCoverage> coverage() {
        return coverage;
    }

    public Drawing drawing() {
        return drawing;
    }

    public Selection selection() {
        return selection;
    }

    /** Photos that are being taken in and are not held yet, in the order of time. */
    public List<FilePreview> coming() {
        return coming;
    }

    /** Shows photos that are being taken in; none when that has ended. */
    public void coming(List<FilePreview> seen) {
        coming = PendingImport.bounded(seen);
        images.coming(coming);
        visitListeners.tell();
    }

    public PhotoImages images() {
        return images;
    }

    public boolean isEditable() {
        return thread.isEditable();
    }

    public Optional<String> undoLabel() {
        return state.undo();
    }

    public Optional<String> redoLabel() {
        return state.redo();
    }

    /** Takes the last step back; whoever shows the visit is told where that was. */
    public void undo() {
        stepBy(VisitStore::undo);
    }

    public void redo() {
        stepBy(VisitStore::redo);
    }

    private void stepBy(StoreWork<Optional<String>> step) {
        VisitRecord before = visit();
        edit(step, label -> ChangedRows.between(before, visit()).ifPresent(changed -> stepped.accept(changed)));
    }

    /** Asks what something rests on. */
    public void ask(Subject subject) {
        asked.accept(subject);
    }

    /** A command that asks what the thing in hand rests on; it can be done while there is one. */
    public Command grounds(Supplier<Optional<Subject>> inHand) {
        return Command.of(parts.texts(), "do.grounds", () -> inHand.get().ifPresent(this::ask));
    }

    /** What something rests on in short, for a pointer that rests on it; empty while that is not known, or if it rests on nothing. */
    public Optional<String> glance(Subject subject) {
        return glanced.apply(subject);
    }

    /** Answers what something rests on in short. */
    public void onGlance(Function<Subject, Optional<String>> answer) {
        glanced = Objects.requireNonNull(answer, "answer");
    }

    /** Told what somebody wants the grounds of. */
    public void onAsked(Consumer<Subject> answer) {
        asked = Objects.requireNonNull(answer, "answer");
    }

    /** Told what undo or redo changed, once the visit holds it. */
    public void onStep(Consumer<ChangedRows> shown) {
        stepped = Objects.requireNonNull(shown, "shown");
    }

    /** Does an edit in the background; a failure is told to the user. When {@code done} runs, the visit holds the edit already. */
    public <T> void edit(StoreWork<T> work, Consumer<? super T> done) {
        edit(work, done, parts.problems()::failed);
    }

    public <T> void edit(StoreWork<T> work, Consumer<? super T> done, Consumer<? super Exception> failed) {
        thread.edit(
                work,
                (result, fresh) -> SwingUtilities.invokeLater(() -> {
                    fresh.ifPresent(this::arrived);
                    done.accept(result);
                }),
                problem -> SwingUtilities.invokeLater(() -> failed.accept(problem)));
    }

    /**
     * Makes pins in the background. They count as under way at once, so that they can be shown, until the visit holds them or has refused
     * them; a refusal is told to {@code failed} when they are gone again.
     */
    public <T> void pin(
            List<Pin> pins, StoreWork<T> work, Consumer<? super T> done, Consumer<? super Exception> failed) {
        List<Pin> made = List.copyOf(pins);
        underWay.add(made);
        underWayListeners.tell();
        thread.edit(
                work,
                (result, fresh) -> SwingUtilities.invokeLater(() -> {
                    underWay.remove(made);
                    fresh.ifPresentOrElse(this::arrived, underWayListeners::tell);
                    done.accept(result);
                }),
                problem -> SwingUtilities.invokeLater(() -> {
                    underWay.remove(made);
                    underWayListeners.tell();
                    failed.accept(problem);
                }));
    }

    /** Pins that were made and that the visit does not hold yet, in the order in which they were made. */
    public List<Pin> underWay() {
        return underWay.stream().flatMap(List::stream).toList();
    }

    /** The store for a long job such as an intake; the job uses it on its worker thread and the screens follow by themselves. */
    public VisitStore store() {
        return thread.store();
    }

    /** Works everything out anew, as after a change of the user's own lists. */
    public void workOutAgain() {
        findingsWork.again(state.visit());
    }

    public Listeners.Registration onVisit(Runnable listener) {
        return visitListeners.add(listener);
    }

    /** Told when pins come under way, and when they are taken back; when the visit holds them, {@link #onVisit} is told. */
    public Listeners.Registration onUnderWay(Runnable listener) {
        return underWayListeners.add(listener);
    }

    /** Told once, when what was measured is known and the findings are still worked out. */
    public Listeners.Registration onMeasured(Runnable listener) {
        return measuredListeners.add(listener);
    }

    public Listeners.Registration onFindings(Runnable listener) {
        return findingsListeners.add(listener);
    }

    /** Tells every screen what stands now; for a screen that was built after the visit opened. */
    public void tellAll() {
        visitListeners.tell();
        if (findings.isPresent()) {
            findingsListeners.tell();
        }
    }

    private void arrived(StoreThread.State fresh) {
        if (fresh.number() <= state.number()) {
            return;
        }
        boolean otherPhotos = !fresh.visit().photos().equals(state.visit().photos());
        boolean otherCar = !fresh.visit().facts().equals(state.visit().facts());
        state = fresh;
        if (otherPhotos) {
            selection.keep(fresh.visit());
        }
        visitListeners.tell();
        if (otherCar) {
            parts.jobs()
                    .start(
                            parts.texts().get("visit.drawing"),
                            progress -> DrawingOf.visit(folder(), fresh.visit().facts()),
                            this::redraw,
                            parts.problems()::failed);
        }
        findingsWork.request(fresh.visit());
    }

    private void redraw(Drawing fresh) {
        drawing = fresh;
        visitListeners.tell();
    }

    private void measuredArrived(Measured fresh) {
        measured = Optional.of(fresh);
        measuredListeners.tell();
        if (measuredListeners.isEmpty()) {
            valuesStand();
        } else {
            Timer last = new Timer(VALUES_MS, tick -> valuesStand());
            last.setRepeats(false);
            last.start();
        }
    }

    private void findingsArrived(Findings fresh, List<ZoneCoverage> covered) {
        findings = Optional.of(fresh);
        coverage = covered;
        findingsListeners.tell();
    }

    private void notWorkedOut(Exception problem) {
        valuesStand();
        parts.problems().failed(problem);
    }

    /** Closes the visit once the work of the store is done; {@code closed} runs on the event thread. */
    public void close(Runnable closed) {
        waiting = Optional.of(new ArrayList<>());
        later = Optional.of(new ArrayList<>());
        findingsWork.stop();
        images.close();
        thread.close(() -> SwingUtilities.invokeLater(closed));
    }

    /** The zone's name for readers. */
    public String label(ZoneId zone) {
        return parts.catalog().get(zone).label();
    }

    /** The zones of the car in the order of the table. */
    public List<ZoneId> zones() {
        return parts.catalog().zonesOf(visit().facts().car().body()).stream()
                .map(zone -> zone.id())
                .toList();
    }

    /** Zones that the pins of a photo name. */
    public Set<ZoneId> zonesOf(PhotoId photo) {
        return state.pinsOf(photo);
    }
}
