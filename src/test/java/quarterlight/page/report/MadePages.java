package quarterlight.page.report;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Future;
import quarterlight.coverage.Coverage;
import quarterlight.coverage.Gap;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.NominalAreas;
import quarterlight.diagram.ZonePlaces;
import quarterlight.diagram.file.DiagramFile;
import quarterlight.diagram.file.DiagramRefused;
import quarterlight.findings.Findings;
import quarterlight.matters.Matters;
import quarterlight.page.Anchor;
import quarterlight.page.PagesChoice;
import quarterlight.page.VisitPages;
import quarterlight.page.brief.BriefPage;
import quarterlight.page.brief.BriefPictures;
import quarterlight.page.brief.MattersDrawing;
import quarterlight.page.print.PageStep;
import quarterlight.page.print.PageWorkers;
import quarterlight.page.report.picture.BuyerPictures;
import quarterlight.photo.pixels.JpegWriter;
import quarterlight.table.ZoneTable;
import quarterlight.table.list.CoverageTable;
import quarterlight.table.list.DatePatternTable;
import quarterlight.table.list.TrialTable;
import quarterlight.task.Progress;
import quarterlight.visit.VisitRecord;

/** All pages of a visit in memory, as the verb makes them: brief, report, diagram. */
final class MadePages {
    private static final Anchor ANCHOR =
            new Anchor(Optional.of("16 " + "0123456789abcdef".repeat(4)), Optional.empty(), Optional.empty());

    private MadePages() {}

    static List<Path> of(VisitRecord visit, Path folder, PagesChoice choice) throws IOException, DiagramRefused {
        BodyDiagram diagram = DiagramFile.shipped(visit.facts().car().body());
        ZonePlaces places = ZonePlaces.of(diagram);
        Findings car = Findings.of(
                visit,
                ZoneTable.load(),
                NominalAreas.sizes(diagram, visit.facts().car().dimensions()),
                DatePatternTable.load());
        List<Gap> gaps = Coverage.gaps(visit, car.catalog(), car.thickness(), car.rust(), CoverageTable.load());
        Matters matters = Matters.of(car, gaps, TrialTable.load());
        BuyerPictures pictures = new BuyerPictures(visit, TypedVisit.colors(), JpegWriter::jpeg);
        List<Path> made = new ArrayList<>();
        try (PageWorkers workers = new PageWorkers(Progress.NONE)) {
            ReportPhotos photos = ReportPhotos.start(visit, car.catalog(), diagram, places, pictures, workers);
            BriefPictures crops = BriefPictures.start(
                            car, matters, () -> MattersDrawing.of(diagram, places, matters), pictures, workers)
                    .finished();
            Future<BriefPage> brief = workers.start(
                    PageStep.BRIEF,
                    () -> BriefPage.of(car, matters, crops, LocalDate.of(2026, 5, 2), ANCHOR, choice.paper()));
            for (Future<Path> page : new VisitPages(car, diagram, places, photo -> Optional.empty(), matters)
                    .start(folder, choice, workers)) {
                made.add(PageWorkers.result(page));
            }
            made.add(PageWorkers.result(brief).write(folder));
            made.addAll(new ReportPages(car, diagram, places, gaps, matters, pictures)
                    .anchoredBy(ANCHOR)
                    .startingWith(brief)
                    .write(folder, choice, photos, workers));
        }
        return made;
    }
}
