package quarterlight.page.sheet;

import static quarterlight.language.Sentences.say;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import quarterlight.car.Car;
import quarterlight.car.Substrate;
import quarterlight.car.View;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneId;
import quarterlight.coverage.TrialItem;
import quarterlight.coverage.TrialList;
import quarterlight.coverage.TrialNature;
import quarterlight.coverage.ZoneCoverage;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.ZonePlaces;
import quarterlight.file.DurableFiles;
import quarterlight.finish.FinishCautions;
import quarterlight.page.print.Paper;
import quarterlight.page.print.PdfDocument;
import quarterlight.page.print.Template;
import quarterlight.rust.need.RepairRule;
import quarterlight.units.Days;
import quarterlight.units.XmlText;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.trial.SignKind;
import quarterlight.visit.trial.TrialNames;

/**
 * The sheet to take along: two upright pages made for one car, black on white, to be written on with a pencil. The first bears the gauge
 * check and the outer views with a place for the readings of each outer panel, the second what is still asked for in the order of the walk,
 * signs, marks and trials.
 */
public final class TakeAlongSheet {
    /** Strips across panels: boxes may lie over them. */
    private static final Set<ZoneId> STRIPS = Set.of(new ZoneId("emblems-moldings"), new ZoneId("weatherstrips"));

    private static final int MAX_PAGES = 2;
    /** How roomy the lines are, mm above the least; the first that fits holds. A long list of one's own may take a third page. */
    private static final double[] EASE = {1.2, 0.5, 0};

    private final VisitRecord visit;
    private final List<Zone> zones;
    private final List<ZoneCoverage> walk;
    private final TrialList trials;
    private final BodyDiagram diagram;
    private final ZonePlaces places;
    /** As if no strip lay across a panel. */
    private final ZonePlaces bare;

    /**
     * @param walk what is still asked for, in the order of the walk
     * @param trials the functions worth trying
     */
    public TakeAlongSheet(
            VisitRecord visit, ZoneCatalog catalog, List<ZoneCoverage> walk, TrialList trials, BodyDiagram diagram) {
        this.visit = Objects.requireNonNull(visit, "visit");
        this.zones = catalog.zonesOf(visit.facts().car().body());
        this.walk = List.copyOf(walk);
        this.trials = Objects.requireNonNull(trials, "trials");
        this.diagram = Objects.requireNonNull(diagram, "diagram");
        this.places = ZonePlaces.of(diagram);
        this.bare = ZonePlaces.of(diagram.without(STRIPS));
    }

    /** Writes the sheet as a PDF that appears whole or not at all. */
    public Path write(Path file, Paper paper) throws IOException {
        byte[] pdf = new byte[0];
        for (double ease : EASE) {
            pdf = pdf(page(paper, ease));
            try (PDDocument made = Loader.loadPDF(pdf)) {
                if (made.getNumberOfPages() <= MAX_PAGES) {
                    break;
                }
            }
        }
        byte[] tightest = pdf;
        return DurableFiles.write(file, out -> out.write(tightest));
    }

    private static byte[] pdf(String page) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PdfDocument.write(page, Map.of(), out);
        return out.toByteArray();
    }

    /** Where the readings of each outer panel are written. */
    ReadingSlots readingPlaces(Paper paper) {
        return ReadingSlots.of(panels(), diagram, bare, room(paper, 0).scale());
    }

    private List<Zone> panels() {
        return zones.stream().filter(Zone::finish).toList();
    }

    private SheetRoom room(Paper paper, double ease) {
        return SheetRoom.of(paper, new SheetViews(diagram, places), ease);
    }

    private String page(Paper paper, double ease) {
        SheetViews views = new SheetViews(diagram, places);
        SheetRoom room = room(paper, ease);
        ReadingSlots readings = readingPlaces(paper);
        VisitFacts facts = visit.facts();
        String title = XmlText.clean(facts.car().name());
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("title", title);
        model.put("paper", paper);
        model.put("room", room);
        model.put("line", line(facts));
        model.put("blanks", blanks(facts));
        model.put("checks", List.of(say("sheet.take-along-sheet.before"), say("sheet.take-along-sheet.after")));
        for (View view : View.values()) {
            double scale = view == View.UNDER || view == View.BAY || view == View.CABIN ? room.small() : room.scale();
            model.put(view.word(), views.element(view, scale, Optional.of(readings)));
        }
        model.put("lefts", names(readings.beside(View.LEFT), SheetViews::withoutSide));
        model.put("rights", names(readings.beside(View.RIGHT), SheetViews::withoutSide));
        model.put("tops", names(readings.beside(View.TOP, View.FRONT, View.REAR), name -> name));
        model.put("cautions", cautions());
        model.put("stops", SheetStop.of(walk, diagram, places));
        model.put("signs", columns(List.of(SignKind.values()), 3, sign -> sign.said()
                .replace('-', ' ')));
        model.put("marks", columns(MarkPlaces.of(visit, labels()), 3, Function.identity()));
        model.put("trials", columns(trials(), 4, Function.identity()));
        return new Template().fill("sheet.ftlh", model);
    }

    private Map<ZoneId, String> labels() {
        return zones.stream().collect(Collectors.toMap(Zone::id, Zone::label));
    }

    private static String line(VisitFacts facts) {
        Car car = facts.car();
        List<String> parts = new ArrayList<>();
        parts.add(say(
                "sheet.take-along-sheet.engine",
                capital(car.body().style().said()),
                car.body().construction().said(),
                car.body().engine().said()));
        parts.add(say("sheet.take-along-sheet.finish", car.finish().said()));
        if (car.substrate() != Substrate.STEEL) {
            parts.add(say("sheet.take-along-sheet.panels-of", car.substrate().said()));
        }
        car.built().ifPresent(date -> parts.add(say("sheet.take-along-sheet.claimed-build-date", date.said())));
        car.modelYear().ifPresent(year -> parts.add(say("sheet.take-along-sheet.model-year", year)));
        facts.odometer().ifPresent(figure -> parts.add(say("sheet.take-along-sheet.odometer", XmlText.clean(figure))));
        return String.join(" \u00b7 ", parts);
    }

    /** What is filled in at the car, with what is known already. */
    private static Map<String, String> blanks(VisitFacts facts) {
        Map<String, String> blanks = new LinkedHashMap<>();
        blanks.put(
                say("sheet.take-along-sheet.date"), facts.date().map(Days::day).orElse(""));
        blanks.put(say("sheet.take-along-sheet.from-to"), "");
        blanks.put(
                say("sheet.take-along-sheet.place"),
                facts.place().map(XmlText::clean).orElse(""));
        blanks.put(
                say("sheet.take-along-sheet.light"),
                facts.light().map(XmlText::clean).orElse(""));
        blanks.put(say("sheet.take-along-sheet.odometer-2"), "");
        blanks.put(
                say("sheet.take-along-sheet.lifted-how"),
                facts.lifted().map(XmlText::clean).orElse(""));
        return blanks;
    }

    private static List<Map<String, Object>> names(List<ReadingSlots.Beside> marks, UnaryOperator<String> shown) {
        return marks.stream()
                .map(mark -> Map.<String, Object>of(
                        "number", mark.number(), "name", shown.apply(mark.zone().label())))
                .toList();
    }

    /** A line for each trial that applies, with a heading for each group. */
    private List<Map<String, Object>> trials() {
        Set<ZoneId> there = zones.stream().map(Zone::id).collect(Collectors.toSet());
        List<Map<String, Object>> lines = new ArrayList<>();
        trials.groups(trials.runs(visit).orElse(true)).forEach((group, items) -> {
            List<TrialItem> here =
                    items.stream().filter(item -> there.contains(item.zone())).toList();
            if (!here.isEmpty()) {
                lines.add(Map.of("heading", true, "name", capital(group.said()), "unit", "", "runs", false));
            }
            here.forEach(item -> lines.add(Map.of(
                    "heading",
                    false,
                    "name",
                    XmlText.clean(TrialNames.said(item.item())),
                    "unit",
                    item.nature() == TrialNature.OBSERVATION
                            ? say("sheet.take-along-sheet.observed")
                            : XmlText.clean(item.unit().orElse("")),
                    "runs",
                    item.onlyRunning())));
        });
        return lines;
    }

    private static List<String> cautions() {
        return List.of(
                say("sheet.take-along-sheet.under-the-car", RepairRule.liftCaution()),
                say("sheet.take-along-sheet.fuel-brakes-battery-keep-flames", RepairRule.fuelBrakeCaution()),
                say("sheet.take-along-sheet.a-bypassed-interlock-can-start", TrialList.caution()),
                say("sheet.take-along-sheet.do-not-blow-out-brake", FinishCautions.oldPaint()),
                say("sheet.take-along-sheet.structural-rust-leave-a-zone"));
    }

    /** Things in columns, read down and then across; the last column may be shorter. */
    private static <A, B> List<List<B>> columns(List<A> things, int count, Function<A, B> shown) {
        int rows = (things.size() + count - 1) / count;
        List<List<B>> columns = new ArrayList<>();
        for (int at = 0; at < things.size(); at += rows) {
            columns.add(things.subList(at, Math.min(at + rows, things.size())).stream()
                    .map(shown)
                    .toList());
        }
        return columns;
    }

    private static String capital(String word) {
        return word.substring(0, 1).toUpperCase(Locale.US) + word.substring(1);
    }
}
