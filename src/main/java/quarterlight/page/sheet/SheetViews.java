package quarterlight.page.sheet;

import static quarterlight.language.Sentences.say;

import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import quarterlight.car.View;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.ZonePlaces;
import quarterlight.diagram.file.SvgPath;
import quarterlight.diagram.ink.DiagramInk;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.diagram.ink.TextMeasure;
import quarterlight.diagram.scene.OneView;
import quarterlight.units.XmlText;

/** Draws the views of a sheet to write on, each as an SVG element of its size on paper: lines light enough for a pencil to stand out. */
final class SheetViews {
    /** Room for the title above a view, mm. */
    static final double TITLE_MM = 4.5;

    static final double WORDS_PT = 6.8;
    private static final double PT_MM = 25.4 / 72;
    private static final double DISC_MM = 1.9;
    private static final String INK = "#202020";
    private static final InkPalette GRAY =
            new InkPalette(Color.WHITE, new Color(0x777C80), new Color(0x3A3F44), new Color(0xCCCCCC), Color.BLACK);

    private final BodyDiagram diagram;
    private final ZonePlaces places;
    private final TextMeasure measure = TextMeasure.bundled();

    SheetViews(BodyDiagram diagram, ZonePlaces places) {
        this.diagram = diagram;
        this.places = places;
    }

    /** Width of a view on paper, mm; 0 if the diagram lacks it. */
    double widthMm(View view, double scale) {
        return diagram.view(view).map(drawing -> drawing.widthMm() * scale).orElse(0.0);
    }

    double heightMm(View view, double scale) {
        return diagram.view(view)
                .map(drawing -> drawing.heightMm() * scale + TITLE_MM)
                .orElse(0.0);
    }

    /**
     * One view with the places for its readings.
     *
     * @param readings made for the same scale; empty for a bare view
     */
    String element(View view, double scale, Optional<ReadingSlots> readings) {
        return diagram.view(view)
                .map(drawing -> new OneView(diagram, places, drawing, scale, TITLE_MM, DiagramInk.BARE, GRAY)
                        .element(
                                say("sheet.sheet-views.view-to-write-on", drawing.title()),
                                written(view, readings, scale)))
                .orElse("");
    }

    private String written(View view, Optional<ReadingSlots> readings, double scale) {
        StringBuilder out = new StringBuilder();
        readings.ifPresent(all -> write(out, view, all, OneView.PX_PER_MM * scale, TITLE_MM * OneView.PX_PER_MM));
        return out.toString();
    }

    private void write(StringBuilder out, View view, ReadingSlots readings, double px, double top) {
        for (ReadingSlots.Inside panel : readings.inside()) {
            if (panel.view() == view) {
                panel.boxes().forEach(box -> box(out, box, px, top));
                if (panel.words()) {
                    name(out, panel, px, top);
                }
            }
        }
        for (ReadingSlots.Beside mark : readings.beside()) {
            if (mark.view() == view) {
                disc(out, mark, px, top);
            }
        }
    }

    private static void box(StringBuilder out, Rectangle2D box, double px, double top) {
        out.append("<rect x=\"")
                .append(SvgPath.number(box.getX() * px))
                .append("\" y=\"")
                .append(SvgPath.number(box.getY() * px + top))
                .append("\" width=\"")
                .append(SvgPath.number(box.getWidth() * px))
                .append("\" height=\"")
                .append(SvgPath.number(box.getHeight() * px))
                .append("\" rx=\"3\" fill=\"#FFFFFF\" stroke=\"" + INK + "\" stroke-width=\"1\"/>");
    }

    private void name(StringBuilder out, ReadingSlots.Inside panel, double px, double top) {
        double size = WORDS_PT * PT_MM * OneView.PX_PER_MM;
        boolean sided = panel.view() == View.LEFT || panel.view() == View.RIGHT;
        String words = sided ? withoutSide(panel.zone().label()) : panel.zone().label();
        double left = panel.boxes().get(0).getX() * px;
        double right = panel.boxes().get(ReadingSlots.SPOTS - 1).getMaxX() * px;
        double room = right - left;
        if (measure.width(words, size, false) > room) {
            return;
        }
        words(out, left, panel.boxes().get(0).getY() * px + top - 3, size, words, false);
    }

    private void disc(StringBuilder out, ReadingSlots.Beside mark, double px, double top) {
        double x = mark.xMm() * px;
        double y = mark.yMm() * px + top;
        double size = WORDS_PT * PT_MM * OneView.PX_PER_MM;
        String number = Integer.toString(mark.number());
        out.append("<circle cx=\"")
                .append(SvgPath.number(x))
                .append("\" cy=\"")
                .append(SvgPath.number(y))
                .append("\" r=\"")
                .append(SvgPath.number(DISC_MM * OneView.PX_PER_MM))
                .append("\" fill=\"#FFFFFF\" stroke=\"" + INK + "\" stroke-width=\"1\"/>");
        words(out, x - measure.width(number, size, true) / 2, y + 0.34 * size, size, number, true);
    }

    private static void words(StringBuilder out, double x, double y, double size, String text, boolean bold) {
        out.append("<text font-family=\"'" + TextMeasure.FAMILY + "', sans-serif\" x=\"")
                .append(SvgPath.number(x))
                .append("\" y=\"")
                .append(SvgPath.number(y))
                .append("\" font-size=\"")
                .append(SvgPath.number(size))
                .append(bold ? "\" font-weight=\"600" : "")
                .append("\" fill=\"" + INK + "\">")
                .append(XmlText.escaped(text))
                .append("</text>");
    }

    /** The name of a panel in a view that shows one side only. */
    static String withoutSide(String label) {
        return label.replaceFirst(",? (left|right|links|rechts)$", "");
    }
}
