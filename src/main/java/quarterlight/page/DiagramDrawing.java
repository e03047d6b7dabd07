package quarterlight.page;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.ViewDrawing;
import quarterlight.diagram.ZonePlaces;
import quarterlight.diagram.ink.DiagramInk;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.diagram.ink.Ramp;
import quarterlight.diagram.ink.TextMeasure;
import quarterlight.diagram.scene.DiagramPainter;
import quarterlight.diagram.scene.DiagramScene;
import quarterlight.diagram.scene.DiagramSvg;
import quarterlight.findings.Findings;
import quarterlight.units.XmlText;

/** The annotated diagram of a visit alone, without photos and tables, for programs that show or change drawings. */
public final class DiagramDrawing {
    private static final double WIDTH_PX = 1300;
    private static final double VIEW_HEIGHT_PX = 900;
    private static final double AROUND_PX = 190;
    private static final double PNG_SCALE = 2;

    private DiagramDrawing() {}

    /** One SVG document without scripts and references. */
    public static String svg(Findings car, BodyDiagram diagram) {
        DiagramInk ink = ink(car, diagram);
        return DiagramSvg.document(
                VisitPages.scene(diagram, ink, VisitPages.layout(diagram, WIDTH_PX, WIDTH_PX / Math.sqrt(2), ink)),
                "Body diagram of " + XmlText.clean(car.visit().facts().car().name()));
    }

    private static DiagramInk ink(Findings car, BodyDiagram diagram) {
        ThicknessRamp ramp = ThicknessRamp.of(List.of(car), ThicknessRamp.usualUnit(car));
        return FindingsInk.of(car, ramp, PinKey.of(car, diagram).marks());
    }

    /** Each view of the diagram alone, as SVG and as PNG of twice its size, by file name. */
    public static Map<String, byte[]> views(Findings car, BodyDiagram diagram) throws IOException {
        DiagramInk ink = ink(car, diagram);
        ZonePlaces places = ZonePlaces.of(diagram);
        Map<String, byte[]> files = new LinkedHashMap<>();
        for (ViewDrawing view : diagram.views()) {
            BodyDiagram alone = new BodyDiagram(diagram.body(), diagram.size(), List.of(view));
            DiagramScene scene = DiagramScene.fitted(
                    alone,
                    places,
                    WIDTH_PX,
                    height(view),
                    true,
                    ink,
                    InkPalette.LIGHT,
                    Ramp.load(),
                    TextMeasure.bundled());
            String name = view.view().word();
            String title = view.title() + " of "
                    + XmlText.clean(car.visit().facts().car().name());
            files.put(name + ".svg", DiagramSvg.document(scene, title).getBytes(StandardCharsets.UTF_8));
            files.put(name + ".png", png(scene));
        }
        return files;
    }

    /** As high as the view comes out over the whole width, with room for title and legend. */
    private static double height(ViewDrawing view) {
        return Math.min(VIEW_HEIGHT_PX, WIDTH_PX * view.heightMm() / view.widthMm() + AROUND_PX);
    }

    private static byte[] png(DiagramScene scene) throws IOException {
        int width = (int) Math.ceil(scene.layout().width() * PNG_SCALE);
        int height = (int) Math.ceil(scene.layout().height() * PNG_SCALE);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(new DiagramPainter(scene).picture(width, height, PNG_SCALE, PNG_SCALE), "png", out);
        return out.toByteArray();
    }
}
