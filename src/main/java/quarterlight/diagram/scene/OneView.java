package quarterlight.diagram.scene;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.ViewDrawing;
import quarterlight.diagram.ZonePlaces;
import quarterlight.diagram.ink.DiagramInk;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.diagram.ink.Ramp;
import quarterlight.diagram.ink.TextMeasure;
import quarterlight.units.XmlText;

/** One view of a body diagram alone, as an SVG element of its size on paper. */
public final class OneView {
    /** Points of a drawing for each mm on paper: lines come out as wide as on the other pages. */
    public static final double PX_PER_MM = 4.76;

    private final ViewDrawing view;
    private final DiagramScene scene;

    /**
     * @param places of the diagram that the view is of
     * @param scale mm on paper for each mm of the view
     * @param titleMm room for the title above it, mm on paper
     */
    public OneView(
            BodyDiagram diagram,
            ZonePlaces places,
            ViewDrawing view,
            double scale,
            double titleMm,
            DiagramInk ink,
            InkPalette palette) {
        this.view = view;
        double px = PX_PER_MM * scale;
        double wide = view.widthMm() * px;
        double high = view.heightMm() * px;
        double top = titleMm * PX_PER_MM;
        SheetLayout layout = new SheetLayout(
                wide,
                top + high,
                px,
                Map.of(view.view(), new Rectangle2D.Double(0, top, wide, high)),
                Map.of(view.view(), new Rectangle2D.Double(0, 0, wide, top + high)),
                Optional.empty(),
                Optional.empty());
        BodyDiagram alone = new BodyDiagram(diagram.body(), diagram.size(), List.of(view));
        this.scene = new DiagramScene(alone, places, layout, ink, palette, Ramp.load(), TextMeasure.bundled());
    }

    /**
     * The element.
     *
     * @param alt what it shows, for those who do not see it
     * @param over what is drawn over it, in px of the drawing; may be empty
     */
    public String element(String alt, String over) {
        double wide = scene.layout().width();
        double high = scene.layout().height();
        return String.format(
                        Locale.ROOT,
                        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %.1f %.1f\" role=\"img\" alt=\"%s\""
                                + " style=\"width: %.2fmm; height: %.2fmm\">",
                        wide,
                        high,
                        XmlText.escaped(alt),
                        wide / PX_PER_MM,
                        high / PX_PER_MM)
                + DiagramSvg.view(scene, view.view(), 0, 0, 1).orElse("") + over + "</svg>";
    }
}
