package quarterlight.store.problem;

import java.nio.file.Path;

/** There is no visit at the path. */
public final class VisitMissing extends VisitProblem {
    public VisitMissing(Path path) {
        super(
                path,
                "There is no visit at " + path + ": no visit.db was found there. Check the path, and whether its drive"
                        + " is connected.",
                null);
    }
}
