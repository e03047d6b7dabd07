package quarterlight.store.problem;

import static quarterlight.language.Sentences.say;

import java.nio.file.Path;

/** There is no visit at the path. */
public final class VisitMissing extends VisitProblem {
    public VisitMissing(Path path) {
        super(path, say("problem.missing", path), null);
    }
}
