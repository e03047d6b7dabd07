package quarterlight.edit.compare;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import quarterlight.compare.matter.CarEvidence;
import quarterlight.compare.matter.FoundMatters;
import quarterlight.compare.said.ComparisonSheet;
import quarterlight.compare.said.SheetMaking;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.file.DiagramRefused;
import quarterlight.diagram.file.VisitDiagram;
import quarterlight.edit.pages.PagesFolder;
import quarterlight.edit.pages.VisitPixels;
import quarterlight.edit.pages.VisitWork;
import quarterlight.matters.Matters;
import quarterlight.page.ThicknessRamp;
import quarterlight.page.brief.BriefText;
import quarterlight.page.compare.CarPage;
import quarterlight.page.compare.ComparisonPages;
import quarterlight.page.print.Paper;
import quarterlight.page.report.picture.BuyerPictures;
import quarterlight.photo.pixels.JpegWriter;
import quarterlight.photo.worker.DecodingWorkers;
import quarterlight.table.CounterpartTable;
import quarterlight.table.TableUnreadable;
import quarterlight.units.ThicknessText;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.VisitRecord;

/** Lays two to six visits side by side: the same for the window and the command line. Immutable. */
public final class ComparisonWork {
    public static final int MIN_CARS = 2;
    public static final int MAX_CARS = 6;

    private final VisitWork work;

    public ComparisonWork(VisitWork work) {
        this.work = Objects.requireNonNull(work, "work");
    }

    /** The cars as a buyer may see them: nothing private or left out takes part in what is worked out. */
    public List<Candidate> open(List<Candidate> cars) throws TableUnreadable {
        List<Candidate> open = new ArrayList<>();
        for (Candidate car : cars) {
            open.add(new Candidate(car.folder(), work.open(car.folder(), car.findings()), car.logHead()));
        }
        return List.copyOf(open);
    }

    /** The words of a comparison of cars as a buyer may see them. */
    public ComparisonSheet sheet(List<Candidate> cars, ComparisonChoice choice) throws TableUnreadable {
        List<Candidate> open = open(cars);
        List<CarEvidence> evidence = new ArrayList<>();
        for (Candidate car : open) {
            Matters matters = work.matters(car.folder(), car.findings());
            evidence.add(FoundMatters.of(car.findings(), matters, BriefText.of(car.findings(), matters)));
        }
        return SheetMaking.of(
                evidence,
                new SheetMaking.Asked(
                        choice.care(),
                        new ThicknessText(unit(open, choice)),
                        choice.first(),
                        choice.second(),
                        work.rules(),
                        CounterpartTable.load()));
    }

    private static ThicknessUnit unit(List<Candidate> cars, ComparisonChoice choice) {
        return choice.unit().orElseGet(() -> ThicknessRamp.usualUnit(cars.get(0).findings()));
    }

    /** Makes the pages of a comparison in a folder, all of them or none; what was made. */
    public List<Path> pages(List<Candidate> cars, ComparisonChoice choice, Path out, Paper paper)
            throws TableUnreadable, DiagramRefused, IOException {
        List<Candidate> open = open(cars);
        ComparisonSheet sheet = sheet(open, choice);
        try (PagesFolder folder = PagesFolder.in(out);
                DecodingWorkers decoding = new DecodingWorkers()) {
            List<CarPage> pages = new ArrayList<>();
            for (Candidate car : open) {
                pages.add(page(car, out, decoding));
            }
            new ComparisonPages(sheet, pages, choice.first(), choice.second()).write(folder.making(), paper);
            return folder.take();
        }
    }

    private static CarPage page(Candidate car, Path out, DecodingWorkers decoding) throws DiagramRefused {
        VisitRecord visit = car.findings().visit();
        BodyDiagram diagram = VisitDiagram.of(car.folder(), visit.facts());
        BuyerPictures pictures =
                new BuyerPictures(visit, new VisitPixels(car.folder(), visit, decoding), JpegWriter::jpeg);
        return new CarPage(car.findings(), diagram, pictures::jpeg, PhotoReferences.of(car, diagram, out));
    }
}
