package quarterlight.store.problem;

import java.nio.file.Path;

/** Another process edits the visit. */
public final class VisitLocked extends VisitProblem {
    public VisitLocked(Path path, Throwable cause) {
        super(path, "The visit " + path + " is being edited elsewhere. Close it there, then try again.", cause);
    }
}
