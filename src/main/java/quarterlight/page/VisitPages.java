package quarterlight.page;

import static quarterlight.language.Sentences.say;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Future;
import java.util.function.Function;
import quarterlight.about.ProgramVersion;
import quarterlight.coverage.TrialList;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.ZonePlaces;
import quarterlight.diagram.ink.DiagramInk;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.diagram.ink.Ramp;
import quarterlight.diagram.ink.TextMeasure;
import quarterlight.diagram.scene.DiagramScene;
import quarterlight.diagram.scene.DiagramSvg;
import quarterlight.diagram.scene.SheetLayout;
import quarterlight.file.DurableFiles;
import quarterlight.findings.Findings;
import quarterlight.findings.NotLookedAt;
import quarterlight.finish.FinishCautions;
import quarterlight.matters.Matters;
import quarterlight.page.print.PageStep;
import quarterlight.page.print.PageWorkers;
import quarterlight.page.print.Paper;
import quarterlight.page.print.PdfDocument;
import quarterlight.page.print.Template;
import quarterlight.task.Progress;
import quarterlight.units.Days;
import quarterlight.units.XmlText;
import quarterlight.visit.photo.PhotoId;

/**
 * Makes the pages of one visit: the annotated diagram as SVG, and as PDF with the tables and the key of pins behind it. Pages
 * hold no places and no data of the photo files beyond their names and times.
 */
public final class VisitPages {
    /** Width at which a sheet is laid out, px: its words of 11 px come out at 6.5 pt on the page. */
    private static final double SHEET_PX = 1300;

    private static final double SIDES_MM = 24;
    private static final double WORDS_MM = 66;
    /** Column of words beside the diagram, and what stands above and below it. */
    private static final double BESIDE_MM = 76;

    private static final double HEAD_MM = 52;
    /** Letters of a caption in the key of pins; the report has it whole. */
    private static final int CAPTION = 220;

    private final Findings car;
    private final BodyDiagram diagram;
    private final ZonePlaces places;
    private final Function<PhotoId, Optional<byte[]>> thumbnails;
    private final Matters matters;

    /** @param thumbnails small pictures, upright, as JPEG without any metadata */
    public VisitPages(Findings car, BodyDiagram diagram, Function<PhotoId, Optional<byte[]>> thumbnails) {
        this(car, diagram, ZonePlaces.of(diagram), thumbnails, Matters.of(car, List.of(), new TrialList(List.of())));
    }

    /**
     * The same, with what is known already.
     *
     * @param matters what matters, worked out of the same findings
     */
    public VisitPages(
            Findings car,
            BodyDiagram diagram,
            ZonePlaces places,
            Function<PhotoId, Optional<byte[]>> thumbnails,
            Matters matters) {
        this.car = car;
        this.diagram = diagram;
        this.places = places;
        this.thumbnails = thumbnails;
        this.matters = Objects.requireNonNull(matters, "matters");
    }

    /**
     * Writes {@code diagram.svg} and {@code diagram.pdf}; each appears whole or not at all.
     *
     * @return the files made
     */
    public List<Path> write(Path folder, Paper paper, Progress progress) throws IOException {
        try (PageWorkers workers = new PageWorkers(progress)) {
            List<Path> made = new ArrayList<>();
            for (Future<Path> file : start(folder, PagesChoice.on(paper), workers)) {
                made.add(PageWorkers.result(file));
            }
            return made;
        }
    }

    /** Starts writing both. */
    public List<Future<Path>> start(Path folder, PagesChoice choice, PageWorkers workers) throws IOException {
        DurableFiles.createFolders(folder);
        workers.expect(2);
        PinKey key = PinKey.of(car, diagram, places);
        ThicknessRamp ramp = choice.ramp(car);
        Paper paper = choice.paper();
        DiagramInk ink = FindingsInk.of(car, ramp, key.marks(), MatterLetters.of(matters));
        Future<Path> pdf = workers.startPage(PageStep.DIAGRAM_PAGE, () -> pdf(folder, paper, key, ramp, ink));
        Future<Path> svg = workers.startPage(PageStep.DIAGRAM, () -> svg(folder, paper, key, ramp, ink));
        return List.of(svg, pdf);
    }

    private Path svg(Path folder, Paper paper, PinKey key, ThicknessRamp ramp, DiagramInk ink) throws IOException {
        double fullMm = paper.heightMm() - SIDES_MM;
        double high = (paper.widthMm() - WORDS_MM) * SHEET_PX / fullMm;
        DiagramScene scene = scene(diagram, places, ink, layout(diagram, SHEET_PX, high, ink));
        return DurableFiles.fillText(
                folder.resolve("diagram.svg"),
                new SvgSheet(car, matters, scene, key, ramp, thumbnails, caution()).document());
    }

    private Path pdf(Path folder, Paper paper, PinKey key, ThicknessRamp ramp, DiagramInk ink) throws IOException {
        double fullMm = paper.heightMm() - SIDES_MM;
        double narrow = SHEET_PX * (fullMm - BESIDE_MM) / fullMm;
        double tall = (paper.widthMm() - HEAD_MM) * SHEET_PX / fullMm;
        DiagramScene narrower = scene(diagram, places, ink, layout(diagram, narrow, tall, ink));
        Map<String, byte[]> pictures = new HashMap<>();
        String page = diagramPage(narrower, key, ramp, paper, pictures);
        return DurableFiles.fill(folder.resolve("diagram.pdf"), out -> PdfDocument.write(page, pictures, out));
    }

    /** The layout of a page with room for its legend, px. */
    public static SheetLayout layout(BodyDiagram diagram, double width, double height, DiagramInk ink) {
        return SheetLayout.fit(diagram, width, height, ink.legend(), TextMeasure.bundled());
    }

    static DiagramScene scene(BodyDiagram diagram, DiagramInk ink, SheetLayout layout) {
        return scene(diagram, ZonePlaces.of(diagram), ink, layout);
    }

    /** The scene of a page, where the middles of the diagram's zones are known already. */
    public static DiagramScene scene(BodyDiagram diagram, ZonePlaces places, DiagramInk ink, SheetLayout layout) {
        return new DiagramScene(diagram, places, layout, ink, InkPalette.LIGHT, Ramp.load(), TextMeasure.bundled());
    }

    /** @param pictures gets the pictures of the pins by their addresses */
    private String diagramPage(
            DiagramScene scene, PinKey key, ThicknessRamp ramp, Paper paper, Map<String, byte[]> pictures) {
        Map<String, Object> model = new LinkedHashMap<>();
        String title = XmlText.clean(car.visit().facts().car().name());
        model.put("title", title);
        model.put("description", say("diagram.visit-pages.annotated-body-diagram-of-with", title));
        model.put(
                "date",
                car.visit().facts().date().map(Days::day).orElse(say("diagram.visit-pages.date-of-the-visit-not")));
        model.put(
                "lead",
                say("diagram.visit-pages.numbers-in-the-zones-mean", ramp.unitName(), MatterLetters.notDrawn(matters)));
        model.put("line", PageFacts.line(car));
        model.put("paper", paper);
        model.put("svg", inline(scene, title, paper.heightMm() - SIDES_MM - BESIDE_MM));
        model.put("caution", caution());
        model.put("matters", Brief.matters(matters));
        model.put("missing", Brief.sentences(NotLookedAt.of(car).sentences()));
        model.put("leftOut", Brief.sentences(ReportSelection.of(car.visit()).sentences(car.catalog())));
        model.put("check", PageFacts.check(car));
        model.put("facts", PageFacts.visit(car));
        model.put("gauge", PageFacts.gauge(car, ramp));
        model.put("cautions", cautions());
        model.put("unit", ramp.unitName());
        model.put("zones", PageFacts.zones(car, ramp));
        model.put("pins", pins(key, pictures));
        model.put("version", ProgramVersion.ours().text());
        return new Template().fill("diagram.ftlh", model);
    }

    /** The drawing as an element of the page, as wide as given. */
    public static String inline(DiagramScene scene, String title, double widthMm) {
        String name = say("diagram.visit-pages.body-diagram-of", title);
        double heightMm = widthMm * scene.layout().height() / scene.layout().width();
        String document = DiagramSvg.document(scene, name);
        int end = document.indexOf('>');
        String head = document.substring(0, end).replaceAll(" (width|height)=\"[^\"]*\"", "");
        String size = String.format(Locale.ROOT, " style=\"width: %.2fmm; height: %.2fmm\"", widthMm, heightMm);
        return head + " alt=\"" + XmlText.escaped(name) + "\"" + size + document.substring(end);
    }

    private List<String> cautions() {
        List<String> all = new ArrayList<>(FinishCautions.texts());
        all.addAll(PageFacts.cautions(car));
        return all;
    }

    private String caution() {
        return FinishCautions.texts().get(0);
    }

    private List<Map<String, Object>> pins(PinKey key, Map<String, byte[]> pictures) {
        Map<ByteBuffer, String> addresses = new HashMap<>();
        List<Map<String, Object>> pins = new ArrayList<>();
        for (PinKey.Entry entry : key.entries()) {
            Optional<byte[]> jpeg = thumbnails.apply(entry.photo());
            // the same picture twice is put into the page once
            Optional<String> address = jpeg.map(
                    bytes -> addresses.computeIfAbsent(ByteBuffer.wrap(bytes), fresh -> "picture:" + addresses.size()));
            address.ifPresent(name -> pictures.put(name, jpeg.orElseThrow()));
            pins.add(pin(entry, address.orElse("")));
        }
        return pins;
    }

    private static Map<String, Object> pin(PinKey.Entry entry, String picture) {
        Map<String, Object> pin = new LinkedHashMap<>();
        pin.put("number", entry.number());
        pin.put("zone", entry.zone());
        pin.put("text", Shortened.to(XmlText.clean(entry.text()), CAPTION));
        pin.put("time", entry.time());
        pin.put("file", XmlText.clean(entry.file()));
        pin.put("alt", say("diagram.visit-pages.photo", entry.number(), entry.zone(), XmlText.clean(entry.text())));
        pin.put("picture", picture);
        return pin;
    }
}
