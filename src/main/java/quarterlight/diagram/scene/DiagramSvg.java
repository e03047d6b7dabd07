package quarterlight.diagram.scene;

import static quarterlight.language.Sentences.say;

import java.awt.geom.Rectangle2D;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import quarterlight.car.View;
import quarterlight.car.ZoneId;
import quarterlight.diagram.file.SvgPath;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.diagram.ink.Legend;
import quarterlight.diagram.ink.TextMeasure;
import quarterlight.units.XmlText;

/** Writes a scene as SVG text for pages: plain paths and words, no scripts, patterns, clips or references, so that every reader shows it alike. */
public final class DiagramSvg {
    /**
     * Where the things of a drawing lead to within a page.
     *
     * @param zones target of a zone; empty for none
     * @param spots target of a disc or letter; empty for none
     */
    public record Links(Function<ZoneId, Optional<String>> zones, Function<DiagramScene.Spot, Optional<String>> spots) {
        /** A drawing to look at only. */
        public static final Links NONE = new Links(zone -> Optional.empty(), spot -> Optional.empty());
    }

    private final DiagramScene scene;
    private final Links links;
    private final Set<ZoneId> reached = new HashSet<>();

    private DiagramSvg(DiagramScene scene, Links links) {
        this.scene = scene;
        this.links = links;
    }

    /** The whole sheet as a document of its own; one unit is one px (or pt) of the layout. */
    public static String document(DiagramScene scene, String title) {
        return document(scene, title, Links.NONE);
    }

    /** The same with links: a zone is a stop for the keyboard where it is drawn first. */
    public static String document(DiagramScene scene, String title, Links links) {
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
                .append(XmlText.escaped(title))
                .append("</title>\n<rect width=\"100%\" height=\"100%\" fill=\"")
                .append(InkPalette.hex(scene.palette().ground()))
                .append("\"/>\n");
        return out.append(new DiagramSvg(scene, links).sheet(0, 0, 1))
                .append("</svg>\n")
                .toString();
    }

    /** All views and the legend as a fragment at a place of an outer drawing. */
    public static String sheet(DiagramScene scene, double x, double y, double scale) {
        return new DiagramSvg(scene, Links.NONE).sheet(x, y, scale);
    }

    private String sheet(double x, double y, double scale) {
        StringBuilder out = new StringBuilder();
        open(out, x, y, scale, "");
        for (ViewScene view : scene.views()) {
            group(out, view);
        }
        if (!scene.legend().isEmpty()) {
            out.append("<g><title>Legend</title>\n");
            write(out, scene.legend());
            out.append("</g>\n");
        }
        if (!scene.key().isEmpty()) {
            out.append("<g><title>" + XmlText.escaped(say("diagram.scene.key")) + "</title>\n");
            write(out, scene.key());
            out.append("</g>\n");
        }
        scene.spots().forEach(spot -> over(out, spot));
        return out.append("</g>\n").toString();
    }

    private void over(StringBuilder out, DiagramScene.Spot spot) {
        links.spots().apply(spot).ifPresent(target -> {
            String name = (spot.kind() == DiagramScene.Spot.Kind.PHOTO ? "Photo " : "Matter ") + spot.text();
            out.append("<a href=\"#")
                    .append(XmlText.escaped(target))
                    .append("\" aria-label=\"")
                    .append(XmlText.escaped(name))
                    .append("\"><rect x=\"");
            out.append(SvgPath.number(spot.box().getX()))
                    .append("\" y=\"")
                    .append(SvgPath.number(spot.box().getY()));
            out.append("\" width=\"")
                    .append(SvgPath.number(spot.box().getWidth()))
                    .append("\" height=\"");
            out.append(SvgPath.number(spot.box().getHeight())).append("\" fill-opacity=\"0\" fill=\"white\"/></a>\n");
        });
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
                    new DiagramSvg(scene, Links.NONE).group(out, found);
                    return out.append("</g>\n").toString();
                });
    }

    /** The legend as a fragment whose band begins at a place of an outer drawing; empty text if there is none. */
    public static String legend(DiagramScene scene, double x, double y, double scale) {
        Rectangle2D band = scene.layout().legend().orElse(new Rectangle2D.Double());
        StringBuilder out = new StringBuilder();
        open(out, x - band.getX() * scale, y - band.getY() * scale, scale, "");
        new DiagramSvg(scene, Links.NONE).write(out, scene.legend());
        return scene.legend().isEmpty() ? "" : out.append("</g>\n").toString();
    }

    private static void open(StringBuilder out, double x, double y, double scale, String more) {
        out.append("<g font-family=\"'")
                .append(TextMeasure.FAMILY)
                .append("', sans-serif\" fill=\"none\" stroke=\"none\" stroke-linecap=\"round\""
                        + " stroke-linejoin=\"round\" transform=\"translate(")
                .append(SvgPath.number(x))
                .append(' ')
                .append(SvgPath.number(y))
                .append(") scale(")
                .append(String.format(Locale.ROOT, "%.5f", scale))
                .append(")\"")
                .append(more)
                .append(">\n");
    }

    private void group(StringBuilder out, ViewScene view) {
        out.append("<g data-view=\"")
                .append(view.view().word())
                .append("\"><title>")
                .append(XmlText.escaped(view.title()))
                .append("</title>\n");
        write(out, view.drawn());
        out.append("</g>\n");
    }

    private void write(StringBuilder out, List<DrawnItem> things) {
        for (DrawnItem thing : things) {
            if (thing instanceof DrawnItem.Filled filled) {
                fill(out, filled);
            } else if (thing instanceof DrawnItem.Stroked stroked) {
                out.append("<path stroke=\"")
                        .append(InkPalette.hex(stroked.color()))
                        .append("\" stroke-width=\"")
                        .append(SvgPath.number(stroked.width()))
                        .append(stroked.plain() ? "\" stroke-linecap=\"butt\" d=\"" : "\" d=\"")
                        .append(SvgPath.write(stroked.shape()))
                        .append("\"/>\n");
            } else if (thing instanceof DrawnItem.Dots dots) {
                fill(out, DrawnItem.Filled.of(Texture.path(dots), dots.color()));
            } else if (thing instanceof DrawnItem.Words words) {
                words(out, words);
            }
        }
    }

    private void fill(StringBuilder out, DrawnItem.Filled filled) {
        Optional<String> target = filled.zone().flatMap(links.zones());
        String name = filled.zone().map(this::named).orElse("");
        target.ifPresent(place -> out.append("<a href=\"#")
                .append(XmlText.escaped(place))
                .append(reached.add(filled.zone().orElseThrow()) ? "" : "\" tabindex=\"-1")
                .append("\" aria-label=\"")
                .append(XmlText.escaped(name))
                .append("\">"));
        out.append("<path fill=\"").append(InkPalette.hex(filled.color())).append("\" fill-rule=\"evenodd\" d=\"");
        out.append(SvgPath.write(filled.shape())).append('"');
        if (filled.zone().isEmpty()) {
            out.append("/>\n");
            return;
        }
        out.append(" data-zone=\"").append(filled.zone().get().value()).append("\"><title>");
        out.append(XmlText.escaped(name)).append("</title></path>").append(target.isPresent() ? "</a>\n" : "\n");
    }

    /** The name of a zone with its value. */
    private String named(ZoneId zone) {
        String name = scene.ink().names().getOrDefault(zone, zone.value());
        String value = scene.ink().textOf(zone);
        String unit = scene.ink()
                .legend()
                .flatMap(Legend::steps)
                .map(Legend.Steps::unit)
                .orElse("");
        return value.isEmpty() ? name : name + ": " + value + (unit.isEmpty() ? "" : " " + unit);
    }

    private static void words(StringBuilder out, DrawnItem.Words words) {
        out.append("<text x=\"")
                .append(SvgPath.number(words.left()))
                .append("\" y=\"")
                .append(SvgPath.number(words.baseline()))
                .append("\" font-size=\"")
                .append(SvgPath.number(words.size()))
                .append(words.bold() ? "\" font-weight=\"600\" fill=\"" : "\" fill=\"")
                .append(InkPalette.hex(words.color()))
                .append("\">")
                .append(XmlText.escaped(words.text()))
                .append("</text>\n");
    }
}
