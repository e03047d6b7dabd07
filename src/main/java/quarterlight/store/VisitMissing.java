package quarterlight.store;

import java.nio.file.Path;

/** There is no visit at the path. */
public final class VisitMissing extends VisitProblem {
    VisitMissing(Path path) {
        super(path, "There is no visit at " + path + ": no visit.db was found there. Check the path.", null);
    }
}
