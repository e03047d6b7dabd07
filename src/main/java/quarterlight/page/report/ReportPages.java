package quarterlight.page.report;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Base64;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Future;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import quarterlight.coverage.Gap;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.ZonePlaces;
import quarterlight.file.DurableFiles;
import quarterlight.findings.Findings;
import quarterlight.matters.Matters;
import quarterlight.page.Anchor;
import quarterlight.page.MatterLetters;
import quarterlight.page.PagesChoice;
import quarterlight.page.PinKey;
import quarterlight.page.ReportSelection;
import quarterlight.page.ThicknessRamp;
import quarterlight.page.brief.BriefPage;
import quarterlight.page.print.FontFaces;
import quarterlight.page.print.PageStep;
import quarterlight.page.print.PageWorkers;
import quarterlight.page.print.Paper;
import quarterlight.page.print.PdfDocument;
import quarterlight.page.print.Template;
import quarterlight.page.report.picture.BuyerPictures;
import quarterlight.page.report.picture.ReportPictures;
import quarterlight.page.report.text.ReportContent;
import quarterlight.task.Progress;
import quarterlight.visit.pin.RecordId;

/**
 * Makes the report of one visit as {@code report.pdf} and as {@code report.html}, one file that needs no other, both from one
 * content. Neither holds a place or anything that a photo's file tells beyond its name and time.
 */
public final class ReportPages {
    private static final Pattern ADDRESS = Pattern.compile("src=\"(picture:[^\"]+)\"");

    private final Findings car;
    private final BodyDiagram diagram;
    private final ZonePlaces places;
    private final List<Gap> gaps;
    private final Matters matters;
    private final BuyerPictures pictures;
    private final Anchor anchor;
    private final Optional<String> heldBack;
    private final Optional<Future<BriefPage>> brief;
    private final Map<RecordId, String> said;

    /**
     * @param places the middles of the diagram's zones
     * @param gaps evidence that the visit lacks, in the order of the walk
     * @param matters what matters, worked out of the same findings
     */
    public ReportPages(
            Findings car,
            BodyDiagram diagram,
            ZonePlaces places,
            List<Gap> gaps,
            Matters matters,
            BuyerPictures pictures) {
        this(car, diagram, places, gaps, matters, pictures, Anchor.NONE, Optional.empty(), Optional.empty(), Map.of());
    }

    private ReportPages(
            Findings car,
            BodyDiagram diagram,
            ZonePlaces places,
            List<Gap> gaps,
            Matters matters,
            BuyerPictures pictures,
            Anchor anchor,
            Optional<String> heldBack,
            Optional<Future<BriefPage>> brief,
            Map<RecordId, String> said) {
        this.said = Map.copyOf(said);
        this.anchor = anchor;
        this.heldBack = heldBack;
        this.brief = brief;
        this.car = Objects.requireNonNull(car, "car");
        this.diagram = Objects.requireNonNull(diagram, "diagram");
        this.places = Objects.requireNonNull(places, "places");
        this.gaps = List.copyOf(gaps);
        this.matters = Objects.requireNonNull(matters, "matters");
        this.pictures = Objects.requireNonNull(pictures, "pictures");
    }

    /** @param to what ties the pages to the evidence, printed small among the methods */
    public ReportPages anchoredBy(Anchor to) {
        return new ReportPages(car, diagram, places, gaps, matters, pictures, to, heldBack, brief, said);
    }

    /** @param sentence how many papers and memos the pages leave out since they are not released */
    public ReportPages holdingBack(Optional<String> sentence) {
        return new ReportPages(car, diagram, places, gaps, matters, pictures, anchor, sentence, brief, said);
    }

    /** @param first the brief, with which the report then begins; started on threads that go on while the report is written */
    public ReportPages startingWith(Future<BriefPage> first) {
        return new ReportPages(
                car, diagram, places, gaps, matters, pictures, anchor, heldBack, Optional.of(first), said);
    }

    /** @param words for a statement that was said on film or memo: when, and in which words as far as these may be told */
    public ReportPages quoting(Map<RecordId, String> words) {
        return new ReportPages(car, diagram, places, gaps, matters, pictures, anchor, heldBack, brief, words);
    }

    /**
     * Writes both; each appears whole or not at all.
     *
     * @return the files made
     */
    public List<Path> write(Path folder, Paper paper, Progress progress) throws IOException {
        try (PageWorkers workers = new PageWorkers(progress)) {
            return write(
                    folder,
                    PagesChoice.on(paper),
                    ReportPhotos.start(car.visit(), car.catalog(), diagram, places, pictures, workers),
                    workers);
        }
    }

    /**
     * The same, on threads that make other pages besides.
     *
     * @param photos of this visit, started on these threads
     */
    public List<Path> write(Path folder, PagesChoice choice, ReportPhotos photos, PageWorkers workers)
            throws IOException {
        DurableFiles.createFolders(folder);
        workers.expect(2);
        ThicknessRamp ramp = choice.ramp(car);
        Paper paper = choice.paper();
        ReportSelection selection = ReportSelection.of(car.visit());
        ReportDrawing drawing =
                new ReportDrawing(car, diagram, places, photos.shots(), MatterLetters.of(matters), ramp);
        PinKey pins = selection.full() ? photos.key() : PinKey.NONE;
        ReportPictures printed = photos.started().finished();
        Optional<BriefPage> first = brief.isPresent() ? Optional.of(PageWorkers.result(brief.get())) : Optional.empty();
        ReportContent content = new ReportBuilder(
                        car, matters, gaps, selection, photos.shots(), printed, ramp, pictures::words, said, diagram)
                .content(paper, anchor, heldBack, first);
        Map<String, byte[]> files = new HashMap<>(printed.byAddress());
        first.ifPresent(page -> files.putAll(page.pictures()));
        Future<Path> pdf = workers.startPage(
                PageStep.REPORT,
                () -> DurableFiles.fill(
                        folder.resolve("report.pdf"),
                        out -> PdfDocument.write(
                                page(content, first, drawing.onPaper(pins, paper), paper, selection.full(), false),
                                files,
                                out)));
        Future<Path> html = workers.startPage(
                PageStep.REPORT_HTML,
                () -> DurableFiles.fill(
                        folder.resolve("report.html"),
                        out -> within(
                                page(
                                        content,
                                        first,
                                        drawing.onScreen(pins, content.targets()),
                                        paper,
                                        selection.full(),
                                        true),
                                files,
                                out)));
        return List.of(PageWorkers.result(pdf), PageWorkers.result(html));
    }

    private static String page(
            ReportContent content,
            Optional<BriefPage> brief,
            String drawing,
            Paper paper,
            boolean full,
            boolean screen) {
        Map<String, Object> model = new HashMap<>();
        model.put("r", content);
        model.put("drawing", drawing);
        brief.ifPresent(first -> model.put("brief", first.content()));
        model.put("paper", paper);
        model.put("screen", screen);
        model.put("fonts", "");
        model.put("full", full);
        String page = new Template().fill("report.ftlh", model);
        return screen ? Template.html(FontFaces.within(page)) : page;
    }

    /** Writes the page with every picture in place of its address. Typed text has its quotes escaped, so it never looks like one. */
    private static void within(String page, Map<String, byte[]> files, OutputStream out) throws IOException {
        int from = 0;
        for (MatchResult found : ADDRESS.matcher(page).results().toList()) {
            out.write(page.substring(from, found.start()).getBytes(StandardCharsets.UTF_8));
            out.write("src=\"data:image/jpeg;base64,".getBytes(StandardCharsets.US_ASCII));
            out.write(Base64.getEncoder().encode(files.get(found.group(1))));
            out.write('"');
            from = found.end();
        }
        out.write(page.substring(from).getBytes(StandardCharsets.UTF_8));
    }
}
