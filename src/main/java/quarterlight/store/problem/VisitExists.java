package quarterlight.store.problem;

import java.nio.file.Path;

/** The path for a new visit is taken. */
public final class VisitExists extends VisitProblem {
    public VisitExists(Path path) {
        super(path, path + " exists already. Give a path that does not exist yet.", null);
    }
}
