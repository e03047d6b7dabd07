package quarterlight.draw;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import quarterlight.car.body.BodyStyle;

/** Writes the views of one style as an SVG sheet; the same drawing data give the same bytes. */
final class SheetText {
    private static final int GAP_MM = 200;
    private static final List<List<String>> ROWS = List.of(
            List.of("left", "front"),
            List.of("right", "rear"),
            List.of("top", "bay"),
            List.of("under"),
            List.of("cabin"));
    private static final String LOOK =
            """
            .silhouette{fill:none;stroke:#20262b;stroke-width:7.5;stroke-linejoin:round}
            .zone{fill:#fff;stroke:#63676b;stroke-width:4;stroke-linejoin:round}
            .gap{fill:none;stroke:#63676b;stroke-width:4;stroke-linejoin:round;stroke-linecap:round}
            .detail{fill:none;stroke:#9b9ea0;stroke-width:2.4;stroke-linejoin:round;stroke-linecap:round}
            .glass{fill:#ecebe6;stroke:none}
            .wheel{fill:#dddbd6;stroke:none}
            .shade{fill:#b9b9b6;stroke:none}
            """;

    private final BodyStyle style;
    private final Map<String, Long> dimensions = new TreeMap<>();
    private final StringBuilder out = new StringBuilder();

    SheetText(BodyStyle style, DrawingScript script) {
        this.style = style;
        for (String name : List.of("wheelbase", "length", "width", "height")) {
            dimensions.put(name, Math.round(script.number(name)));
        }
    }

    String of(List<ViewDrawing> views) {
        Map<String, ViewDrawing> byName = new TreeMap<>();
        views.forEach(view -> byName.put(view.window().name(), view));
        double first = ROWS.stream()
                .filter(row -> byName.containsKey(row.get(0)))
                .mapToDouble(row -> byName.get(row.get(0)).window().width())
                .max()
                .orElse(0);
        double second = ROWS.stream()
                .filter(row -> row.size() > 1 && byName.containsKey(row.get(1)))
                .mapToDouble(row -> byName.get(row.get(1)).window().width())
                .max()
                .orElse(0);
        StringBuilder groups = new StringBuilder();
        double y = GAP_MM;
        for (List<String> row : ROWS) {
            double height = 0;
            for (int i = 0; i < row.size(); i++) {
                if (byName.containsKey(row.get(i))) {
                    ViewDrawing view = byName.get(row.get(i));
                    height = Math.max(height, view.window().height());
                    group(groups, view, i == 0 ? GAP_MM : GAP_MM + first + GAP_MM, y);
                }
            }
            y += height + GAP_MM;
        }
        head(3 * GAP_MM + first + second, y);
        return out.append(groups).append("</svg>\n").toString();
    }

    private void head(double width, double height) {
        out.append(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %s %s\" data-style=\"%s\""
                        + " data-wheelbase-mm=\"%d\" data-length-mm=\"%d\" data-width-mm=\"%d\" data-height-mm=\"%d\">%n",
                number(width),
                number(height),
                style.word(),
                dimensions.get("wheelbase"),
                dimensions.get("length"),
                dimensions.get("width"),
                dimensions.get("height")));
        out.append("<title>Body diagram: ").append(style.word()).append("</title>\n");
        out.append("<desc>Eight views of an invented ").append(style.word());
        out.append("; 1 unit is 1 mm. Made from diagrams/curves/").append(style.word());
        out.append(".draw by quarterlight.draw.DrawDiagrams: change the curves, not this file.</desc>\n");
        out.append("<style>\n").append(LOOK).append("</style>\n");
    }

    private static void group(StringBuilder to, ViewDrawing view, double x, double y) {
        ViewDrawing.Window window = view.window();
        to.append(String.format(
                Locale.ROOT,
                "<g data-view=\"%s\" data-width-mm=\"%s\" data-height-mm=\"%s\" transform=\"translate(%s %s)\">%n",
                window.name(),
                number(window.width()),
                number(window.height()),
                number(x),
                number(y)));
        to.append("<title>").append(window.title()).append("</title>\n");
        Set<String> ids = new HashSet<>();
        for (Piece piece : view.pieces()) {
            to.append("<path ");
            if (piece.zone().isPresent()) {
                String id = window.name() + "-" + piece.zone().get();
                to.append("id=\"")
                        .append(ids.add(id) ? id : id + piece.applies().suffix())
                        .append("\" ");
            }
            to.append("class=\"").append(piece.kind()).append("\" ");
            piece.zone()
                    .ifPresent(zone -> to.append("data-zone=\"").append(zone).append("\" "));
            path(to, window, piece.shape());
            to.append(piece.applies().attributes()).append("/>\n");
        }
        if (!view.silhouette().isEmpty()) {
            to.append("<path class=\"silhouette\" ");
            path(to, window, view.silhouette());
            to.append("/>\n");
        }
        to.append("</g>\n");
    }

    private static void path(StringBuilder to, ViewDrawing.Window window, Geometry shape) {
        Geometry page = window.toPage().transform(shape);
        to.append("d=\"");
        String between = "";
        for (int i = 0; i < page.getNumGeometries(); i++) {
            if (page.getGeometryN(i) instanceof Polygon polygon) {
                to.append(between);
                ring(to, polygon.getExteriorRing().getCoordinates(), true);
                for (int k = 0; k < polygon.getNumInteriorRing(); k++) {
                    to.append(' ');
                    ring(to, polygon.getInteriorRingN(k).getCoordinates(), true);
                }
            } else {
                to.append(between);
                ring(to, page.getGeometryN(i).getCoordinates(), false);
            }
            between = " ";
        }
        to.append('"');
    }

    private static void ring(StringBuilder to, Coordinate[] points, boolean closed) {
        int last = closed ? points.length - 1 : points.length;
        for (int i = 0; i < last; i++) {
            to.append(i == 0 ? "M" : i == 1 ? " L" : " ");
            to.append(number(points[i].x)).append(',').append(number(points[i].y));
        }
        if (closed) {
            to.append(" Z");
        }
    }

    private static String number(double value) {
        long tenths = Math.round(value * 10);
        String text = Long.toString(tenths / 10);
        if (tenths < 0 && tenths > -10) {
            text = "-0";
        }
        return tenths % 10 == 0 ? Long.toString(tenths / 10) : text + "." + Math.abs(tenths % 10);
    }
}
