package quarterlight.ui.kit;

import java.nio.file.Path;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import quarterlight.diagram.DiagramRefused;
import quarterlight.photo.Pictures;
import quarterlight.store.VisitLocked;
import quarterlight.store.VisitOpening;
import quarterlight.store.VisitProblem;
import quarterlight.store.VisitStore;
import quarterlight.visit.VisitFacts;

/** Opens and makes visits for the window, in the background. Event thread only. */
public final class VisitDoor {
    private final DeskParts parts;

    public VisitDoor(DeskParts parts) {
        this.parts = parts;
    }

    /** Reads the schema that the program carries, so it is asked for in the background. */
    private VisitOpening opening() {
        return VisitOpening.by(parts.clock()).guardedBy(VisitDoor::refuseEventThread);
    }

    /** The guard of the store: the window must not wait for the disk. */
    private static void refuseEventThread() {
        if (SwingUtilities.isEventDispatchThread()) {
            throw new IllegalStateException("the store is used on the event thread");
        }
    }

    /** Opens a visit, for reading only if another process edits it. */
    public void open(Path folder, Consumer<OpenVisit> opened) {
        begin(folder, opened, () -> {
            try {
                return opening().forEditing(folder);
            } catch (VisitLocked e) {
                return opening().forReading(folder);
            }
        });
    }

    /** Makes a visit and opens it. */
    public void create(Path folder, VisitFacts facts, Consumer<OpenVisit> opened) {
        begin(folder, opened, () -> opening().create(folder, facts));
    }

    private interface Opening {
        VisitStore open() throws VisitProblem;
    }

    private record Ready(StoreThread thread, StoreThread.State state, OpenVisit.Drawing drawing) {}

    private void begin(Path folder, Consumer<OpenVisit> opened, Opening way) {
        parts.jobs()
                .start(
                        parts.texts().get("visit.opening", String.valueOf(folder.getFileName())),
                        progress -> ready(way),
                        ready -> opened.accept(new OpenVisit(
                                parts,
                                ready.thread(),
                                new PhotoImages(ready.thread().folder(), Pictures.usual()),
                                ready.state(),
                                ready.drawing())),
                        parts.problems()::failed);
    }

    private static Ready ready(Opening way) throws VisitProblem, DiagramRefused {
        VisitStore store = way.open();
        try {
            StoreThread thread = new StoreThread(store);
            StoreThread.State state = thread.first();
            return new Ready(
                    thread,
                    state,
                    DrawingOf.visit(store.folder().root(), state.visit().facts()));
        } catch (VisitProblem | DiagramRefused | RuntimeException e) {
            store.close();
            throw e;
        }
    }
}
