package quarterlight.page.report;

import static quarterlight.language.Sentences.say;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.ZonePlaces;
import quarterlight.diagram.ink.DiagramInk;
import quarterlight.diagram.ink.LetterMark;
import quarterlight.diagram.scene.DiagramScene;
import quarterlight.diagram.scene.DiagramSvg;
import quarterlight.findings.Findings;
import quarterlight.page.FindingsInk;
import quarterlight.page.PinKey;
import quarterlight.page.ThicknessRamp;
import quarterlight.page.VisitPages;
import quarterlight.page.print.Paper;
import quarterlight.page.report.text.Shots;
import quarterlight.page.report.text.ZoneTexts;
import quarterlight.units.XmlText;

/** The body diagram of a report: on paper with links laid over its discs and letters, on the screen as the way in. */
final class ReportDrawing {
    private static final double SIDES_MM = 24;
    private static final double HEAD_MM = 66;
    /** Px to a mm of the drawing: its words of 11 px come out at 6.5 pt on paper. */
    private static final double PX_PER_MM = 4.76;

    private static final double BROAD_PX = 1000;
    private static final double NARROW_PX = 500;
    private static final double SHARE_OF_WIDTH = 0.8;

    private final Findings car;
    private final BodyDiagram diagram;
    private final ZonePlaces places;
    private final Map<String, String> photos;
    private final List<LetterMark> letters;
    private final ThicknessRamp ramp;

    ReportDrawing(
            Findings car,
            BodyDiagram diagram,
            ZonePlaces places,
            Shots shots,
            List<LetterMark> letters,
            ThicknessRamp ramp) {
        this.car = car;
        this.diagram = diagram;
        this.places = places;
        this.photos = shots.all().stream().collect(Collectors.toMap(Shots.Shot::number, Shots.Shot::id, (a, b) -> a));
        this.letters = letters;
        this.ramp = ramp;
    }

    private DiagramScene scene(PinKey key, double width, double height) {
        DiagramInk ink = FindingsInk.of(car, ramp, key.marks(), letters);
        return VisitPages.scene(diagram, places, ink, VisitPages.layout(diagram, width, height, ink));
    }

    private Optional<String> target(DiagramScene.Spot spot) {
        return spot.kind() == DiagramScene.Spot.Kind.PHOTO
                ? Optional.ofNullable(photos.get(spot.text()))
                : Optional.of("matter-" + spot.text());
    }

    String onPaper(PinKey key, Paper paper) {
        double widthMm = paper.widthMm() - SIDES_MM;
        DiagramScene scene = scene(key, widthMm * PX_PER_MM, (paper.heightMm() - HEAD_MM) * PX_PER_MM);
        double mmPerPx = widthMm / scene.layout().width();
        StringBuilder links = new StringBuilder();
        for (DiagramScene.Spot spot : scene.spots()) {
            target(spot)
                    .ifPresent(target -> links.append(String.format(
                            Locale.ROOT,
                            "<a class=\"spot\" href=\"#%s\" title=\"%s\" style=\"left: %.2fmm; top: %.2fmm;"
                                    + " width: %.2fmm; height: %.2fmm\">%s</a>",
                            target,
                            say(
                                    spot.kind() == DiagramScene.Spot.Kind.PHOTO
                                            ? "report.report-drawing.photo"
                                            : "report.report-drawing.matter",
                                    spot.text()),
                            spot.box().getX() * mmPerPx,
                            spot.box().getY() * mmPerPx,
                            spot.box().getWidth() * mmPerPx,
                            spot.box().getHeight() * mmPerPx,
                            spot.text())));
        }
        return "<div class=\"over\">"
                + VisitPages.inline(scene, car.visit().facts().car().name(), widthMm) + links + "</div>";
    }

    /** Broad and narrow; a page shows the one that suits. */
    String onScreen(PinKey key, Set<String> targets) {
        DiagramSvg.Links links = new DiagramSvg.Links(
                zone -> Optional.of(ZoneTexts.id(zone)).filter(targets::contains),
                spot -> target(spot).filter(place -> targets.contains(place) || photos.containsValue(place)));
        return drawing("broad", scene(key, BROAD_PX, SHARE_OF_WIDTH * BROAD_PX), links)
                + drawing("narrow", scene(key, NARROW_PX, 2 * NARROW_PX), links);
    }

    private String drawing(String which, DiagramScene scene, DiagramSvg.Links links) {
        String name = say(
                "report.report-drawing.body-diagram-of",
                XmlText.clean(car.visit().facts().car().name()));
        String svg = DiagramSvg.document(scene, name, links)
                .replace(" role=\"img\"", " aria-label=\"" + XmlText.escaped(name) + "\"");
        return "<div class=\"drawing " + which + "\">" + svg + "</div>";
    }
}
