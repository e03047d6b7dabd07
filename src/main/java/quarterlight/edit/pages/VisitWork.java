package quarterlight.edit.pages;

import static quarterlight.language.Sentences.say;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Future;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import quarterlight.archive.signature.PublicHalf;
import quarterlight.archive.signature.SigningKeyFile;
import quarterlight.capture.CorrectedTimes;
import quarterlight.car.ZoneCatalog;
import quarterlight.coverage.Coverage;
import quarterlight.coverage.CoverageRules;
import quarterlight.coverage.Gap;
import quarterlight.coverage.TrialList;
import quarterlight.coverage.ZoneCoverage;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.ZonePlaces;
import quarterlight.diagram.file.DiagramRefused;
import quarterlight.diagram.file.VisitDiagram;
import quarterlight.edit.archive.MadeArchives;
import quarterlight.edit.intake.VisitThumbnails;
import quarterlight.edit.list.VisitLists;
import quarterlight.edit.spoken.SaidQuotes;
import quarterlight.findings.Findings;
import quarterlight.findings.Measured;
import quarterlight.finish.place.ZoneSizes;
import quarterlight.language.Language;
import quarterlight.marks.code.DatePatterns;
import quarterlight.matters.Matters;
import quarterlight.page.Anchor;
import quarterlight.page.PagesChoice;
import quarterlight.page.PinKey;
import quarterlight.page.ReportSelection;
import quarterlight.page.VisitPages;
import quarterlight.page.brief.BriefPage;
import quarterlight.page.brief.BriefPictures;
import quarterlight.page.brief.MattersDrawing;
import quarterlight.page.check.PageCheck;
import quarterlight.page.check.PageLook;
import quarterlight.page.check.Secrets;
import quarterlight.page.print.PageStep;
import quarterlight.page.print.PageWorkers;
import quarterlight.page.print.Paper;
import quarterlight.page.report.ReportPages;
import quarterlight.page.report.ReportPhotos;
import quarterlight.page.report.picture.BuyerPictures;
import quarterlight.page.report.text.Shots;
import quarterlight.page.sheet.TakeAlongSheet;
import quarterlight.photo.pixels.JpegWriter;
import quarterlight.photo.worker.DecodingWorkers;
import quarterlight.store.TakeoverReport;
import quarterlight.store.VisitOpening;
import quarterlight.store.VisitStore;
import quarterlight.store.folder.VisitFolder;
import quarterlight.store.problem.VisitProblem;
import quarterlight.store.problem.VisitUnreadable;
import quarterlight.table.TableUnreadable;
import quarterlight.table.list.CoverageTable;
import quarterlight.table.list.DatePatternTable;
import quarterlight.table.list.TrialTable;
import quarterlight.task.Progress;
import quarterlight.visit.ReportLength;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.WithheldFiles;

/** What is worked out of visits and the pages made of it, the same for the window and the command line. Immutable. */
public final class VisitWork {
    private final ZoneCatalog catalog;
    private final BiFunction<Path, VisitFacts, ZoneSizes> areas;
    private final Path settings;

    /**
     * @param areas nominal areas of the zones of a visit in a folder
     * @param settings folder of the user's own lists
     */
    public VisitWork(ZoneCatalog catalog, BiFunction<Path, VisitFacts, ZoneSizes> areas, Path settings) {
        this.catalog = Objects.requireNonNull(catalog, "catalog");
        this.areas = Objects.requireNonNull(areas, "areas");
        this.settings = Objects.requireNonNull(settings, "settings");
    }

    /** @throws TableUnreadable if the user's own list of date patterns cannot be read */
    public Findings findings(Path folder, VisitRecord visit) throws TableUnreadable {
        return findings(folder, measured(folder, visit));
    }

    /** What of a visit is known without judging it. */
    public Measured measured(Path folder, VisitRecord visit) {
        return Measured.of(visit, catalog, areas.apply(folder, visit.facts()));
    }

    /** @throws TableUnreadable if the user's own list of date patterns cannot be read */
    public Findings findings(Path folder, Measured measured) throws TableUnreadable {
        return measured.judged(patterns(folder));
    }

    /** How far each zone is covered by what a visit holds now, in the order of the walk; asked for by the user's own lists if there are any. */
    public List<ZoneCoverage> coverage(Path folder, Findings findings, VisitRecord visit) throws TableUnreadable {
        return Coverage.zones(
                visit,
                findings.catalog(),
                findings.thickness(),
                findings.rust(),
                CoverageTable.load(VisitLists.folder(folder, settings)));
    }

    /**
     * What matters about the car of a visit in a folder: for the inspector from all that is there. For the buyer's, {@linkplain #open take}
     * the findings from what a buyer may see.
     */
    public Matters matters(Path folder, Findings findings) throws TableUnreadable {
        return Matters.of(findings, gaps(folder, findings), trials(folder));
    }

    private List<Gap> gaps(Path folder, Findings findings) throws TableUnreadable {
        return coverage(folder, findings, findings.visit()).stream()
                .flatMap(zone -> zone.gaps().stream())
                .toList();
    }

    /** What date codes of a visit in a folder are read by: the program's patterns and the inspector's own, or those that came with the visit. */
    public DatePatterns patterns(Path folder) throws TableUnreadable {
        return DatePatternTable.load(VisitLists.folder(folder, settings));
    }

    /** Opens visits for reading, and tells what of a received one was left out. */
    public VisitOpening visits(Consumer<TakeoverReport> teller) {
        return VisitOpening.by(Clock.systemUTC()).onThisComputer(settings).telling(teller);
    }

    /** The functions worth trying: the inspector's own list, else the program's. */
    public TrialList trials(Path folder) throws TableUnreadable {
        return TrialTable.load(VisitLists.folder(folder, settings));
    }

    /** Makes the pages of a visit in a folder, all of them or none, and looks them over as who gets them would. */
    public CheckedPages pages(VisitStore store, Path out, PagesChoice choice, Progress progress)
            throws TableUnreadable, DiagramRefused, VisitProblem, IOException {
        return pages(store, out, choice, MadeArchives.last(store.folder().root()), true, progress);
    }

    /** The same, for pages that go into an archive: they cannot bear its hash, and another's would mislead. */
    public List<Path> pagesWithin(VisitStore store, Path out, PagesChoice choice, Progress progress)
            throws TableUnreadable, DiagramRefused, VisitProblem, IOException {
        return pages(store, out, choice, Optional.empty(), false, progress).files();
    }

    private CheckedPages pages(
            VisitStore store, Path out, PagesChoice choice, Optional<String> archive, boolean looked, Progress progress)
            throws TableUnreadable, DiagramRefused, VisitProblem, IOException {
        requireOwn(store.folder(), out);
        Anchor anchor =
                new Anchor(store.logHead(), new SigningKeyFile(settings).open().map(PublicHalf::fingerprint), archive);
        Language asked = Language.inHand();
        try (PagesFolder folder = PagesFolder.in(out);
                Language.Scope spoken = choice.language().inHandUntilClosed()) {
            Objects.requireNonNull(spoken, "spoken");
            PageCheck check = makePages(store, folder, choice, anchor, looked, progress, asked);
            return new CheckedPages(folder.take(), check);
        }
    }

    /** Writes the photos that the report shows in full size, as a buyer may see them: pixels only, and nothing that is hidden. */
    public void pictures(VisitStore store, Path out, Progress progress)
            throws DiagramRefused, VisitProblem, IOException {
        VisitRecord visit = store.read().forBuyer();
        Path folder = store.folder().root();
        try (DecodingWorkers decoding = new DecodingWorkers()) {
            BodyDiagram diagram = VisitDiagram.of(folder, visit.facts());
            CorrectedTimes times = CorrectedTimes.of(visit);
            PinKey key = PinKey.shown(visit, times, catalog, diagram, ZonePlaces.of(diagram));
            Shots shots = Shots.of(visit, times, key, ReportSelection.of(visit));
            FullSize.write(
                    visit,
                    shots,
                    new BuyerPictures(visit, new VisitPixels(folder, visit, decoding), JpegWriter::jpeg),
                    out,
                    progress);
        }
    }

    /** A visit that came from somebody else must not have pages written over what lies elsewhere. */
    private static void requireOwn(VisitFolder visit, Path out) throws FileSystemException, VisitUnreadable {
        if (out.startsWith(visit.root()) && !Files.isDirectory(visit.root())) {
            throw VisitUnreadable.gone(visit.root(), null);
        }
        if (out.equals(visit.pages()) && Files.isSymbolicLink(out)) {
            throw new FileSystemException(out.toString(), null, say("refused.pages.link"));
        }
    }

    private PageCheck makePages(
            VisitStore store,
            PagesFolder pages,
            PagesChoice choice,
            Anchor anchor,
            boolean looked,
            Progress progress,
            Language asked)
            throws TableUnreadable, DiagramRefused, VisitProblem, IOException {
        VisitRecord whole = store.read();
        VisitRecord visit = choice.brief() ? whole.forBuyer().reported(ReportLength.SHORT) : whole.forBuyer();
        Paper paper = choice.paper();
        Path folder = store.folder().root();
        Path out = pages.making();
        try (VisitThumbnails thumbnails = VisitThumbnails.of(store.folder());
                DecodingWorkers decoding = new DecodingWorkers();
                PageWorkers workers = new PageWorkers(progress, asked)) {
            decoding.start();
            workers.expect(1);
            PageLook look = new PageLook(looked ? Secrets.of(whole, whole.forBuyer()) : Set.of(), workers);
            if (looked) {
                workers.tellOf(look::over);
            }
            BodyDiagram diagram = VisitDiagram.of(folder, visit.facts());
            BuyerPictures pictures =
                    new BuyerPictures(visit, new VisitPixels(folder, visit, decoding), JpegWriter::jpeg);
            Future<ReportPhotos> choosing = workers.start(
                    PageStep.PHOTOS,
                    () -> ReportPhotos.start(visit, catalog, diagram, ZonePlaces.of(diagram), pictures, workers));
            Findings findings = findings(folder, visit);
            List<Gap> gaps = gaps(folder, findings);
            Matters matters = Matters.of(findings, gaps, trials(folder));
            BriefPictures.Started crops = BriefPictures.start(
                    findings,
                    matters,
                    () -> MattersDrawing.of(diagram, ZonePlaces.of(diagram), matters),
                    pictures,
                    workers);
            ReportPhotos photos = PageWorkers.result(choosing);
            ZonePlaces places = photos.places();
            LocalDate today = LocalDate.now(Clock.system(visit.facts().timezone()));
            Future<BriefPage> brief = workers.start(
                    PageWorkers.Turn.FIRST,
                    PageStep.BRIEF,
                    () -> BriefPage.of(findings, matters, crops.finished(), today, anchor, paper));
            List<Future<Path>> drawn = new ArrayList<>(
                    new VisitPages(findings, diagram, places, pictures.thumbnails(thumbnails.by(visit)), matters)
                            .start(out, choice, workers));
            drawn.add(workers.startPage(
                    PageStep.BRIEF, () -> PageWorkers.result(brief).write(out)));
            new ReportPages(findings, diagram, places, gaps, matters, pictures)
                    .anchoredBy(anchor)
                    .holdingBack(WithheldFiles.of(whole).sentence(whole))
                    .quoting(SaidQuotes.of(whole, visit, folder, catalog, settings))
                    .startingWith(brief)
                    .write(out, choice, photos, workers);
            for (Future<Path> page : drawn) {
                PageWorkers.result(page);
            }
            return look.finished(looked ? pages.made() : List.of());
        }
    }

    /** Writes the sheet to take along to the car of a visit. */
    public Path sheet(VisitStore store, Path file, Paper paper)
            throws TableUnreadable, DiagramRefused, VisitProblem, IOException {
        VisitRecord visit = store.read();
        Path folder = store.folder().root();
        List<ZoneCoverage> walk = coverage(folder, findings(folder, visit), visit);
        BodyDiagram diagram = VisitDiagram.of(folder, visit.facts());
        return new TakeAlongSheet(visit, catalog, walk, trials(folder), diagram).write(file, paper);
    }

    /** What evidence is asked for on this computer, whatever came with single visits. */
    public CoverageRules rules() throws TableUnreadable {
        return CoverageTable.load(settings);
    }

    /** The findings from what a buyer may see. */
    public Findings open(Path folder, Findings car) throws TableUnreadable {
        VisitRecord open = car.visit().forBuyer();
        return open.equals(car.visit()) ? car : findings(folder, open);
    }
}
