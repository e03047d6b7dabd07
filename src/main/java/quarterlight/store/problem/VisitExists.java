package quarterlight.store.problem;

import static quarterlight.language.Sentences.say;

import java.nio.file.Path;

/** The path for a new visit is taken. */
public final class VisitExists extends VisitProblem {
    public VisitExists(Path path) {
        super(path, say("problem.exists", path), null);
    }
}
