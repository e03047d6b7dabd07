package quarterlight.ui.compare;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import quarterlight.compare.said.ComparisonSheet;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.ZonePlaces;
import quarterlight.diagram.file.DiagramRefused;
import quarterlight.diagram.file.VisitDiagram;
import quarterlight.edit.compare.Candidate;
import quarterlight.edit.compare.ComparisonChoice;
import quarterlight.edit.compare.ComparisonWork;
import quarterlight.findings.Findings;
import quarterlight.store.TakeoverReport;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.table.TableUnreadable;
import quarterlight.task.Progress;
import quarterlight.ui.kit.UiContext;

/** Visits read and worked out, ready to be laid side by side, as a buyer may see them. Immutable. */
record LoadedCars(List<Car> cars, ComparisonSheet sheet, List<TakeoverReport> reports) {
    LoadedCars {
        cars = List.copyOf(cars);
        reports = List.copyOf(reports);
    }

    /** One of them. */
    record Car(Candidate candidate, BodyDiagram diagram, ZonePlaces places) {
        Findings findings() {
            return candidate.findings();
        }

        String name() {
            return findings().visit().facts().car().name();
        }
    }

    /** Reads the visits; not on the event thread. */
    static LoadedCars of(UiContext parts, List<Path> folders, ComparisonChoice choice, Progress progress)
            throws VisitProblem, TableUnreadable, DiagramRefused {
        List<TakeoverReport> reports = new ArrayList<>();
        List<Candidate> read = new ArrayList<>();
        for (Path folder : folders) {
            progress.checkCancelled();
            progress.report(read.size(), folders.size(), String.valueOf(folder.getFileName()));
            try (VisitStore store = parts.work().visits(reports::add).forReading(folder)) {
                read.add(new Candidate(
                        folder, parts.work().findings(folder, store.read().forBuyer()), store.logHead()));
            }
        }
        ComparisonWork work = work(parts);
        List<Car> cars = new ArrayList<>();
        for (Candidate one : work.open(read)) {
            BodyDiagram diagram =
                    VisitDiagram.of(one.folder(), one.findings().visit().facts());
            cars.add(new Car(one, diagram, ZonePlaces.of(diagram)));
        }
        progress.checkCancelled();
        return new LoadedCars(cars, work.sheet(read, choice), reports);
    }

    static ComparisonWork work(UiContext parts) {
        return new ComparisonWork(parts.work());
    }

    List<Candidate> candidates() {
        return cars.stream().map(Car::candidate).toList();
    }

    LoadedCars with(ComparisonSheet other) {
        return new LoadedCars(cars, other, reports);
    }
}
