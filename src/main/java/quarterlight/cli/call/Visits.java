package quarterlight.cli.call;

import java.nio.file.Path;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.visit.VisitRecord;

/** Reads a visit and closes it again. */
public final class Visits {
    private Visits() {}

    public static VisitRecord read(CliContext around, Path visit) throws VisitProblem {
        try (VisitStore store = around.visits().forReading(visit)) {
            return store.read();
        }
    }
}
