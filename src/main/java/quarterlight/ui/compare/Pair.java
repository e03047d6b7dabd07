package quarterlight.ui.compare;

import java.nio.file.Path;
import quarterlight.compare.Comparison;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.DiagramRefused;
import quarterlight.diagram.VisitDiagram;
import quarterlight.diagram.ZonePlaces;
import quarterlight.edit.VisitWork;
import quarterlight.findings.Findings;
import quarterlight.store.VisitProblem;
import quarterlight.store.VisitStore;
import quarterlight.table.TableUnreadable;
import quarterlight.task.Progress;

/** Two visits read and worked out, ready to be laid side by side. Immutable. */
record Pair(Car a, Car b, Comparison comparison) {
    /** One of the two. */
    record Car(Path folder, Findings findings, BodyDiagram diagram, ZonePlaces places) {
        String name() {
            return findings.visit().facts().car().name();
        }
    }

    /** Reads both visits; not on the event thread. */
    static Pair of(VisitWork work, Path folderA, Path folderB, Progress progress)
            throws VisitProblem, TableUnreadable, DiagramRefused {
        Car a = car(work, folderA, progress, 0);
        Car b = car(work, folderB, progress, 1);
        progress.checkCancelled();
        return new Pair(a, b, work.compared(a.findings(), b.findings()));
    }

    private static Car car(VisitWork work, Path folder, Progress progress, int done)
            throws VisitProblem, TableUnreadable, DiagramRefused {
        progress.checkCancelled();
        progress.report(done, 2, String.valueOf(folder.getFileName()));
        try (VisitStore store = VisitStore.openForReading(folder)) {
            Findings findings = work.findings(folder, store.read());
            BodyDiagram diagram = VisitDiagram.of(folder, findings.visit().facts());
            return new Car(folder, findings, diagram, ZonePlaces.of(diagram));
        }
    }
}
