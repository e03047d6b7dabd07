package quarterlight.store.problem;

import static quarterlight.language.Sentences.say;

import java.nio.file.Path;

/** Another process edits the visit. */
public final class VisitLocked extends VisitProblem {
    public VisitLocked(Path path, Throwable cause) {
        super(path, say("problem.locked", path), cause);
    }
}
