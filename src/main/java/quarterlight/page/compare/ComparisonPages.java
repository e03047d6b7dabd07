package quarterlight.page.compare;

import static quarterlight.language.Sentences.say;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import quarterlight.compare.said.ComparisonSheet;
import quarterlight.compare.said.PlaceText;
import quarterlight.diagram.ink.DiagramInk;
import quarterlight.diagram.ink.TextMeasure;
import quarterlight.diagram.scene.DiagramScene;
import quarterlight.file.DurableFiles;
import quarterlight.page.FindingsInk;
import quarterlight.page.PageFacts;
import quarterlight.page.Shortened;
import quarterlight.page.ThicknessRamp;
import quarterlight.page.VisitPages;
import quarterlight.page.print.FontFaces;
import quarterlight.page.print.Paper;
import quarterlight.page.print.PdfDocument;
import quarterlight.page.print.Template;
import quarterlight.page.report.text.ClaimTexts;

/**
 * The pages of a comparison: first all cars side by side and everything grave or major on any of them, then two of them in detail, then what to do
 * with one hour more. They name no winner. The same content as PDF and as one HTML file.
 */
public final class ComparisonPages {
    /** Width at which one of the two diagrams is laid out, px. */
    private static final double SHEET_PX = 760;

    private static final double SIDES_MM = 24;
    private static final double BETWEEN_MM = 6;
    /** Room for the words on a page of diagrams. */
    private static final double WORDS_MM = 84;

    /** Room for the number of the page, which stands beside the names. */
    private static final double NUMBER_MM = 40;

    private static final double FOOT_PT = 8;
    private static final double PT_PER_MM = 72 / 25.4;
    private static final int MAX_NAME = 120;
    private static final int MIN_NAME = 4;

    /** So many places are shown with photos; the rest stand in the table. */
    private static final int MAX_PLACES = 16;

    private final ComparisonSheet sheet;
    private final List<CarPage> cars;
    private final int first;
    private final int second;

    /**
     * @param cars those of the sheet, in its order
     * @param first which of them is the first of the two in detail
     */
    public ComparisonPages(ComparisonSheet sheet, List<CarPage> cars, int first, int second) {
        this.sheet = sheet;
        this.cars = List.copyOf(cars);
        this.first = first;
        this.second = second;
    }

    /**
     * Writes {@code compare.pdf} and {@code compare.html} into a folder in which nobody looks yet.
     *
     * @return the files made
     */
    public List<Path> write(Path folder, Paper paper) throws IOException {
        DurableFiles.createFolders(folder);
        Map<String, Object> model = model(paper);
        model.put("screen", false);
        String pdf = new Template().fill("compare.ftlh", model);
        model.put("screen", true);
        model.put("fonts", FontFaces.css());
        String html = new Template().fill("compare.ftlh", model);
        return List.of(
                DurableFiles.fill(folder.resolve("compare.pdf"), out -> PdfDocument.write(pdf, Map.of(), out)),
                DurableFiles.fillText(folder.resolve("compare.html"), Template.html(html)));
    }

    private Map<String, Object> model(Paper paper) {
        double widthMm = (paper.heightMm() - SIDES_MM - BETWEEN_MM) / 2;
        double high = (paper.widthMm() - WORDS_MM) * SHEET_PX / widthMm;
        ThicknessRamp ramp = ThicknessRamp.of(
                List.of(cars.get(first).findings(), cars.get(second).findings()),
                sheet.unit().unit());
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("paper", paper);
        model.put("sheet", sheet);
        model.put("pair", sheet.pair());
        model.put("first", first);
        model.put("second", second);
        model.put("lead", ComparisonSheet.lead());
        model.put("nothing", ComparisonSheet.nothingHeavy());
        model.put("title", title());
        model.put("names", names(Integer.MAX_VALUE));
        model.put("foot", foot(paper));
        model.put("pictures", new CarPictures(cars));
        model.put("svgA", drawing(cars.get(first), ramp, high, widthMm));
        model.put("svgB", drawing(cars.get(second), ramp, high, widthMm));
        model.put(
                "scale",
                new LevelScale(
                        sheet.pair().letters().a(), sheet.pair().letters().b()));
        model.put("places", shown());
        model.put(
                "claims",
                cars.stream().map(car -> ClaimTexts.of(car.findings())).toList());
        model.put("cautions", cautions());
        return model;
    }

    private String title() {
        List<String> numbers = List.of(
                say("compare.comparison-pages.two"),
                say("compare.comparison-pages.three"),
                say("compare.comparison-pages.four"),
                say("compare.comparison-pages.five"),
                say("compare.comparison-pages.six"));
        return say("compare.comparison-pages.cars-side-by-side", numbers.get(cars.size() - 2));
    }

    private String names(int most) {
        List<String> names = sheet.cars().stream()
                .map(car -> car.letter() + " " + Shortened.to(car.name(), most))
                .toList();
        return String.join(" \u00b7 ", names);
    }

    /** The names in one line beside the number of the page: as much of each as has room. */
    private String foot(Paper paper) {
        double room = (paper.heightMm() - SIDES_MM - NUMBER_MM) * PT_PER_MM;
        int most = MAX_NAME;
        while (most > MIN_NAME && TextMeasure.bundled().width(names(most), FOOT_PT, false) > room) {
            most--;
        }
        return names(most);
    }

    /** Places with something to look at: those of grave and major rows, then those that differ and have photos. */
    private List<PlaceText> shown() {
        Set<PlaceText> shown = new LinkedHashSet<>();
        sheet.heavy().forEach(row -> all().filter(place ->
                        row.row().subject().places().contains(place.zone().place()))
                .filter(PlaceText::hasPhotos)
                .forEach(shown::add));
        int heavy = shown.size();
        all().filter(place -> !place.differences().isEmpty()
                        && !place.a().photos().isEmpty()
                        && !place.b().photos().isEmpty())
                .forEach(shown::add);
        return shown.stream().limit(Math.max(MAX_PLACES, heavy)).toList();
    }

    private Stream<PlaceText> all() {
        return Stream.concat(sheet.pair().places().stream(), sheet.pair().apart().stream())
                .filter(PlaceText::isKnown);
    }

    private static String drawing(CarPage car, ThicknessRamp ramp, double high, double widthMm) {
        DiagramInk ink = FindingsInk.of(car.findings(), ramp, List.of());
        DiagramScene scene = VisitPages.scene(
                car.diagram(),
                quarterlight.diagram.ZonePlaces.of(car.diagram()),
                ink,
                VisitPages.layout(car.diagram(), SHEET_PX, high, ink));
        return VisitPages.inline(scene, car.findings().visit().facts().car().name(), widthMm);
    }

    private List<String> cautions() {
        Set<String> cautions = new LinkedHashSet<>(sheet.cautions());
        cars.forEach(car -> cautions.addAll(PageFacts.cautions(car.findings())));
        return List.copyOf(cautions);
    }
}
