package quarterlight.page;

import java.util.List;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.ink.DiagramInk;
import quarterlight.diagram.scene.DiagramSvg;
import quarterlight.findings.Findings;
import quarterlight.units.XmlText;

/** The annotated diagram of a visit alone, without photos and tables, for programs that show or change drawings. */
public final class DiagramDrawing {
    private static final double WIDTH_PX = 1300;

    private DiagramDrawing() {}

    /** One SVG document without scripts and references. */
    public static String svg(Findings car, BodyDiagram diagram) {
        ThicknessRamp ramp = ThicknessRamp.of(List.of(car), ThicknessRamp.usualUnit(car));
        DiagramInk ink = FindingsInk.of(car, ramp, PinKey.of(car, diagram).marks());
        return DiagramSvg.document(
                VisitPages.scene(diagram, ink, VisitPages.layout(diagram, WIDTH_PX, WIDTH_PX / Math.sqrt(2), ink)),
                "Body diagram of " + XmlText.clean(car.visit().facts().car().name()));
    }
}
