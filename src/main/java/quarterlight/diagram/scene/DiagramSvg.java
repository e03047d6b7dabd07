package quarterlight.diagram.scene;

import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import quarterlight.car.View;
import quarterlight.diagram.file.SvgPath;
import quarterlight.diagram.ink.Legend;
import quarterlight.diagram.ink.TextMeasure;

/** Writes a scene as SVG text for pages: plain paths and words, no scripts, patterns, clips or references, so that every reader shows it alike. */
public final class DiagramSvg {
    private DiagramSvg() {}

    /** The whole sheet as a document of its own; one unit is one px (or pt) of the layout. */
    public static String document(DiagramScene scene, String title) {
        SheetLayout layout = scene.layout();
        StringBuilder out = new StringBuilder("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 ")
                .append(SvgPath.number(layout.width()))
                .append(' ')
                .append(SvgPath.number(layout.height()))
                .append("\" width=\"")
                .append(SvgPath.number(layout.width()))
                .append("\" height=\"")
                .append(SvgPath.number(layout.height()))
                .append("\" role=\"img\">\n<title>")
                .append(escape(title))
                .append("</title>\n<rect width=\"100%\" height=\"100%\" fill=\"")
                .append(hex(scene.palette().ground()))
                .append("\"/>\n");
        return out.append(sheet(scene, 0, 0, 1)).append("</svg>\n").toString();
    }

    /** All views and the legend as a fragment at a place of an outer drawing. */
    public static String sheet(DiagramScene scene, double x, double y, double scale) {
        StringBuilder out = new StringBuilder();
        open(out, x, y, scale, "");
        for (ViewScene view : scene.views()) {
            group(out, scene, view);
        }
        if (!scene.legend().isEmpty()) {
            out.append("<g><title>Legend</title>\n");
            write(out, scene, scene.legend());
            out.append("</g>\n");
        }
        if (!scene.key().isEmpty()) {
            out.append("<g><title>Zones that bear a number</title>\n");
            write(out, scene, scene.key());
            out.append("</g>\n");
        }
        return out.append("</g>\n").toString();
    }

    /** One view as a fragment whose cell begins at a place of an outer drawing; empty if the scene lacks the view. */
    public static Optional<String> view(DiagramScene scene, View view, double x, double y, double scale) {
        return scene.views().stream()
                .filter(candidate -> candidate.view() == view)
                .findFirst()
                .map(found -> {
                    Rectangle2D cell = found.cell();
                    StringBuilder out = new StringBuilder();
                    open(out, x - cell.getX() * scale, y - cell.getY() * scale, scale, "");
                    group(out, scene, found);
                    return out.append("</g>\n").toString();
                });
    }

    /** The legend as a fragment whose band begins at a place of an outer drawing; empty text if there is none. */
    public static String legend(DiagramScene scene, double x, double y, double scale) {
        Rectangle2D band = scene.layout().legend().orElse(new Rectangle2D.Double());
        StringBuilder out = new StringBuilder();
        open(out, x - band.getX() * scale, y - band.getY() * scale, scale, "");
        write(out, scene, scene.legend());
        return scene.legend().isEmpty() ? "" : out.append("</g>\n").toString();
    }

    private static void open(StringBuilder out, double x, double y, double scale, String more) {
        out.append("<g font-family=\"'")
                .append(TextMeasure.FAMILY)
                .append(
                        "', sans-serif\" fill=\"none\" stroke=\"none\" stroke-linecap=\"round\" stroke-linejoin=\"round\" transform=\"translate(")
                .append(SvgPath.number(x))
                .append(' ')
                .append(SvgPath.number(y))
                .append(") scale(")
                .append(String.format(Locale.ROOT, "%.5f", scale))
                .append(")\"")
                .append(more)
                .append(">\n");
    }

    private static void group(StringBuilder out, DiagramScene scene, ViewScene view) {
        out.append("<g data-view=\"")
                .append(view.view().word())
                .append("\"><title>")
                .append(escape(view.title()))
                .append("</title>\n");
        write(out, scene, view.drawn());
        out.append("</g>\n");
    }

    private static void write(StringBuilder out, DiagramScene scene, List<Drawn> things) {
        for (Drawn thing : things) {
            if (thing instanceof Drawn.Filled filled) {
                fill(out, scene, filled);
            } else if (thing instanceof Drawn.Stroked stroked) {
                out.append("<path stroke=\"")
                        .append(hex(stroked.color()))
                        .append("\" stroke-width=\"")
                        .append(SvgPath.number(stroked.width()))
                        .append(stroked.plain() ? "\" stroke-linecap=\"butt\" d=\"" : "\" d=\"")
                        .append(SvgPath.write(stroked.shape()))
                        .append("\"/>\n");
            } else if (thing instanceof Drawn.Dots dots) {
                fill(out, scene, Drawn.Filled.of(Texture.path(dots), dots.color()));
            } else if (thing instanceof Drawn.Words words) {
                words(out, words);
            }
        }
    }

    private static void fill(StringBuilder out, DiagramScene scene, Drawn.Filled filled) {
        out.append("<path fill=\"").append(hex(filled.color())).append("\" fill-rule=\"evenodd\" d=\"");
        out.append(SvgPath.write(filled.shape())).append('"');
        if (filled.zone().isEmpty()) {
            out.append("/>\n");
            return;
        }
        String id = filled.zone().get().value();
        String name = scene.ink().names().getOrDefault(filled.zone().get(), id);
        String value = scene.ink().textOf(filled.zone().get());
        String unit = scene.ink()
                .legend()
                .flatMap(Legend::steps)
                .map(Legend.Steps::unit)
                .orElse("");
        out.append(" data-zone=\"").append(id).append("\"><title>").append(escape(name));
        if (!value.isEmpty()) {
            out.append(": ").append(escape(value)).append(unit.isEmpty() ? "" : " " + escape(unit));
        }
        out.append("</title></path>\n");
    }

    private static void words(StringBuilder out, Drawn.Words words) {
        out.append("<text x=\"")
                .append(SvgPath.number(words.left()))
                .append("\" y=\"")
                .append(SvgPath.number(words.baseline()))
                .append("\" font-size=\"")
                .append(SvgPath.number(words.size()))
                .append(words.bold() ? "\" font-weight=\"600\" fill=\"" : "\" fill=\"")
                .append(hex(words.color()))
                .append("\">")
                .append(escape(words.text()))
                .append("</text>\n");
    }

    private static String hex(Color color) {
        return String.format("#%06x", color.getRGB() & 0xFFFFFF);
    }

    private static String escape(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                default -> {
                    boolean allowed = c >= 0x20 && c != 0xFFFE && c != 0xFFFF && !(c >= 0xD800 && c <= 0xDFFF);
                    if (allowed || c == '\t' || c == '\n') {
                        out.appendCodePoint(c);
                    }
                }
            }
        });
        return out.toString();
    }
}
