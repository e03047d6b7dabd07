package quarterlight.ui.compare;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import quarterlight.compare.Comparison;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.ZonePlaces;
import quarterlight.diagram.file.DiagramRefused;
import quarterlight.diagram.file.VisitDiagram;
import quarterlight.edit.pages.VisitWork;
import quarterlight.findings.Findings;
import quarterlight.store.CustomsSlip;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.table.TableUnreadable;
import quarterlight.task.Progress;

/** Two visits read and worked out, ready to be laid side by side. Immutable. */
record Pair(Car a, Car b, Comparison comparison, List<CustomsSlip> slips) {
    /** One of the two. */
    record Car(Path folder, Findings findings, BodyDiagram diagram, ZonePlaces places) {
        String name() {
            return findings.visit().facts().car().name();
        }
    }

    /** Reads both visits; not on the event thread. */
    static Pair of(VisitWork work, Path folderA, Path folderB, Progress progress)
            throws VisitProblem, TableUnreadable, DiagramRefused {
        List<CustomsSlip> slips = new ArrayList<>();
        Car a = car(work, folderA, slips, progress, 0);
        Car b = car(work, folderB, slips, progress, 1);
        progress.checkCancelled();
        return new Pair(a, b, work.compared(a.findings(), b.findings()), List.copyOf(slips));
    }

    private static Car car(VisitWork work, Path folder, List<CustomsSlip> slips, Progress progress, int done)
            throws VisitProblem, TableUnreadable, DiagramRefused {
        progress.checkCancelled();
        progress.report(done, 2, String.valueOf(folder.getFileName()));
        try (VisitStore store = work.visits(slips::add).forReading(folder)) {
            Findings findings = work.findings(folder, store.read());
            BodyDiagram diagram = VisitDiagram.of(folder, findings.visit().facts());
            return new Car(folder, findings, diagram, ZonePlaces.of(diagram));
        }
    }
}
