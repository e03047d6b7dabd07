package quarterlight.page;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import quarterlight.coverage.Coverage;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.NominalAreas;
import quarterlight.diagram.ZonePlaces;
import quarterlight.diagram.file.DiagramRefused;
import quarterlight.diagram.file.VisitDiagram;
import quarterlight.edit.pages.VisitPixels;
import quarterlight.findings.Findings;
import quarterlight.matters.Matters;
import quarterlight.page.print.Paper;
import quarterlight.page.report.ReportPages;
import quarterlight.page.report.picture.BuyerPictures;
import quarterlight.photo.pixels.JpegWriter;
import quarterlight.photo.worker.DecodingWorkers;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.table.ZoneTable;
import quarterlight.table.list.CoverageTable;
import quarterlight.table.list.DatePatternTable;
import quarterlight.table.list.TrialTable;
import quarterlight.task.Progress;
import quarterlight.visit.VisitRecord;

/** How long the report of a visit takes, cold and warm, and how large it comes out. Argument: the folder of a visit. */
public final class ReportBench {
    private ReportBench() {}

    /** Makes the report three times into a temporary folder and prints seconds and bytes of each. */
    public static void main(String[] args) throws VisitProblem, DiagramRefused, IOException {
        Path folder = Path.of(args[0]);
        Path out = Files.createTempDirectory("report-bench");
        try (DecodingWorkers decoding = new DecodingWorkers();
                VisitStore store = VisitStore.openForReading(folder)) {
            for (int round = 1; round <= 3; round++) {
                long start = System.nanoTime();
                VisitRecord record = store.read();
                BodyDiagram diagram = VisitDiagram.of(folder, record.facts());
                Findings car = Findings.of(
                        record,
                        ZoneTable.load(),
                        NominalAreas.sizes(diagram, record.facts().car().dimensions()),
                        DatePatternTable.load());
                long found = System.nanoTime();
                List<Path> made = new ReportPages(
                                car,
                                diagram,
                                ZonePlaces.of(diagram),
                                Coverage.gaps(record, car.catalog(), car.thickness(), car.rust(), CoverageTable.load()),
                                Matters.of(car, List.of(), TrialTable.load()),
                                new BuyerPictures(record, new VisitPixels(folder, record, decoding), JpegWriter::jpeg))
                        .write(out, Paper.A4, Progress.NONE);
                System.out.printf(
                        Locale.ROOT,
                        "round %d: findings %.1f s, report %.1f s, %,d and %,d bytes%n",
                        round,
                        (found - start) / 1e9,
                        (System.nanoTime() - found) / 1e9,
                        Files.size(made.get(0)),
                        Files.size(made.get(1)));
            }
        }
    }
}
