package quarterlight.page.panel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.StringReader;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import quarterlight.car.View;
import quarterlight.car.ZoneId;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.ViewDrawing;
import quarterlight.diagram.file.DiagramFile;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.diagram.ink.TextMeasure;
import quarterlight.findings.Findings;
import quarterlight.page.print.DrawnSvg;
import quarterlight.table.ZoneTable;
import quarterlight.table.list.DatePatternTable;
import quarterlight.thickness.VisitBuilder;
import quarterlight.thickness.spot.SpotKind;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.pin.ViewPoint;

class PanelProfileTest {
    private static final int FRAME = 12;
    private static final TextMeasure MEASURE = TextMeasure.bundled();
    private static final ZoneId DOOR = new ZoneId("door-front-left");

    private static Findings findings(VisitRecord visit) throws Exception {
        return Findings.of(visit, ZoneTable.load(), Map.of(), DatePatternTable.load());
    }

    private static ViewPoint left(double x, double y) {
        return new ViewPoint(View.LEFT, x, y);
    }

    private static VisitBuilder door() {
        return new VisitBuilder()
                .readingAt(DOOR.value(), "130", left(0.40, 0.5), "")
                .readingAt(DOOR.value(), "none", left(0.45, 0.55), "")
                .readingAt(DOOR.value(), "over", left(0.50, 0.6), "")
                .readingAt(DOOR.value(), "400", left(0.55, 0.5), "factory joint")
                .reading(DOOR.value(), "135");
    }

    @Test
    void spotsStandWhereTheyWereTakenInMillimetersOfTheView() throws Exception {
        VisitRecord visit = door().build();
        BodyDiagram diagram = DiagramFile.shipped(visit.facts().car().body());
        ViewDrawing view = diagram.view(View.LEFT).orElseThrow();
        PanelProfile profile = PanelProfile.of(findings(visit), diagram, DOOR).orElseThrow();
        assertThat(profile.view()).isEqualTo(View.LEFT);
        assertThat(profile.points())
                .extracting(PanelProfile.Point::kind)
                .containsExactly(SpotKind.VALUE, SpotKind.NO_METAL, SpotKind.OVER, SpotKind.VALUE);
        assertThat(profile.points().get(0).xMm()).isCloseTo(0.40 * view.widthMm(), within(1e-9));
        assertThat(profile.points().get(0).yMm()).isCloseTo(0.5 * view.heightMm(), within(1e-9));
        assertThat(profile.points())
                .extracting(PanelProfile.Point::excluded)
                .containsExactly(false, false, false, true);
        assertThat(profile.elsewhere()).singleElement().matches(point -> point.um()
                .equals(OptionalDouble.of(135)));
    }

    @Test
    void aPanelTallerThanWideIsTurnedAndKeepsItsLengths() throws Exception {
        String cowl = "cowl";
        VisitRecord visit = new VisitBuilder()
                .readingAt(cowl, "120", new ViewPoint(View.TOP, 0.36, 0.3), "")
                .readingAt(cowl, "125", new ViewPoint(View.TOP, 0.36, 0.7), "")
                .build();
        BodyDiagram diagram = DiagramFile.shipped(visit.facts().car().body());
        ViewDrawing view = diagram.view(View.TOP).orElseThrow();
        PanelProfile profile =
                PanelProfile.of(findings(visit), diagram, new ZoneId(cowl)).orElseThrow();
        Rectangle2D bounds = profile.bounds();
        assertThat(bounds.getWidth()).isGreaterThan(bounds.getHeight());
        double apart = profile.points().get(1).xMm() - profile.points().get(0).xMm();
        assertThat(apart).isCloseTo(0.4 * view.heightMm(), within(1e-9));
    }

    @Test
    void aZoneThatCannotBeReadOrHasNoPlaceHasNoProfile() throws Exception {
        VisitRecord visit = new VisitBuilder()
                .reading("hood", "120")
                .readingAt("roof", "120", new ViewPoint(View.TOP, 0.5, 0.5), "")
                .substrate("roof", quarterlight.car.Substrate.FIBERGLASS)
                .build();
        BodyDiagram diagram = DiagramFile.shipped(visit.facts().car().body());
        Findings found = findings(visit);
        assertThat(PanelProfile.of(found, diagram, new ZoneId("hood"))).isEmpty();
        assertThat(PanelProfile.of(found, diagram, new ZoneId("roof"))).isEmpty();
        assertThat(PanelProfile.of(found, diagram, new ZoneId("decklid"))).isEmpty();
    }

    private static PanelProfileDrawing drawing(double width, InkPalette palette) throws Exception {
        VisitRecord visit = door().build();
        PanelProfile profile = PanelProfile.of(
                        findings(visit), DiagramFile.shipped(visit.facts().car().body()), DOOR)
                .orElseThrow();
        return new PanelProfileDrawing(
                profile, ThicknessUnit.UM, palette, MEASURE, width, PanelProfileDrawing.Room.WINDOW);
    }

    private static BufferedImage painted(PanelProfileDrawing drawing, InkPalette palette) {
        BufferedImage image = new BufferedImage(
                (int) drawing.widthPx() + 2 * FRAME,
                (int) Math.ceil(drawing.heightPx()) + 2 * FRAME,
                BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(palette.ground());
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        g.translate(FRAME, FRAME);
        drawing.draw(g);
        g.dispose();
        return image;
    }

    @ParameterizedTest
    @ValueSource(ints = {300, 455, 900})
    void nothingIsDrawnOutsideItsSize(int width) throws Exception {
        for (InkPalette palette : List.of(InkPalette.LIGHT, InkPalette.DARK)) {
            BufferedImage image = painted(drawing(width, palette), palette);
            for (int y = 0; y < image.getHeight(); y++) {
                for (int x = 0; x < image.getWidth(); x++) {
                    boolean frame = x < FRAME - 2
                            || y < FRAME - 2
                            || x >= image.getWidth() - FRAME + 2
                            || y >= image.getHeight() - FRAME + 2;
                    if (frame) {
                        assertThat(image.getRGB(x, y))
                                .as("%d, %d", x, y)
                                .isEqualTo(palette.ground().getRGB());
                    }
                }
            }
        }
    }

    /** A value of half the scale's top reaches half as far up as the top does: the scale is even from 0. */
    @Test
    void theStemRisesInProportionToTheCoating() throws Exception {
        PanelProfile.Point low = new PanelProfile.Point(100, 50, SpotKind.VALUE, OptionalDouble.of(100), false, false);
        PanelProfile.Point high = new PanelProfile.Point(900, 50, SpotKind.VALUE, OptionalDouble.of(400), false, false);
        PanelProfile profile =
                new PanelProfile(View.LEFT, "Left side", List.of(), List.of(low, high), List.of(), 50, 5);
        PanelProfileDrawing drawing = new PanelProfileDrawing(
                profile, ThicknessUnit.UM, InkPalette.LIGHT, MEASURE, 500, PanelProfileDrawing.Room.WINDOW);
        BufferedImage image = painted(drawing, InkPalette.LIGHT);
        double lowTop = circleTop(image, FRAME + 34);
        double highTop = circleTop(image, FRAME + 500 - 14);
        double metal = FRAME + 22 + 132;
        assertThat((metal - highTop - 4.2) / (metal - lowTop - 4.2)).isCloseTo(4, within(0.15));
    }

    /** The first row of ink in the column of a point, below its number. */
    private static double circleTop(BufferedImage image, int x) {
        int run = 0;
        for (int y = FRAME + 22 + 131; y > 0; y--) {
            boolean ink = new Color(image.getRGB(x, y)).getRed() < 140;
            boolean ring = new Color(image.getRGB(x - 4, y)).getRed() < 140
                    || new Color(image.getRGB(x + 4, y)).getRed() < 140;
            if (ring && !ink) {
                run = y;
            }
            if (run > 0 && ink && y < run) {
                return y;
            }
        }
        return 0;
    }

    @Test
    void theElementIsXmlAndSaysValuesAndView() throws Exception {
        PanelProfileDrawing drawing = drawing(455, InkPalette.LIGHT);
        String element = DrawnSvg.element(drawing.widthPx(), drawing.heightPx(), drawing::draw, "Door <left>");
        Document document = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(element)));
        assertThat(document.getDocumentElement().getTextContent()).contains("Door <left>", "130", "135");
        assertThat(drawing.words())
                .contains("130 \u00b5m", "no metal", "beyond the range")
                .doesNotContain("400");
    }
}
