package quarterlight.cli;

import java.nio.file.Path;
import quarterlight.store.VisitProblem;
import quarterlight.store.VisitStore;
import quarterlight.visit.VisitRecord;

/** Reads a visit and closes it again. */
final class Visits {
    private Visits() {}

    static VisitRecord read(Surroundings around, Path visit) throws VisitProblem {
        try (VisitStore store = around.visits().forReading(visit)) {
            return store.read();
        }
    }
}
