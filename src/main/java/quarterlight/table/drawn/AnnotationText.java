package quarterlight.table.drawn;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import quarterlight.table.json.JsonObject;

/**
 * Drawings as Web Annotations. Source: W3C Recommendation "Web Annotation Data Model", February 23, 2017, sections 3.1, 4.2.7 (SVG selector), 4.2.1
 * (fragment selector, of "Media Fragments URI 1.0", for the moment of a film) and 5 (collections). The row as its table writes it stands under {@code ql:row}.
 */
public final class AnnotationText {
    static final String ROW = "ql:row";
    static final String PREFIX = "ql:";
    private static final String MOMENT = "at";

    private AnnotationText() {}

    public static String of(Drawings drawings) {
        List<JsonObject> items =
                drawings.rows().stream().map(AnnotationText::annotation).toList();
        JsonObject own = new JsonObject().put("ql", "urn:quarterlight:");
        return new JsonObject()
                .put("@context", List.of("http://www.w3.org/ns/anno.jsonld", own))
                .put("id", "urn:quarterlight:drawings")
                .put("type", "AnnotationCollection")
                .put("label", "Outlines and notes: " + drawings.car())
                .put("total", items.size())
                .put(
                        "first",
                        new JsonObject()
                                .put("id", "urn:quarterlight:drawings:1")
                                .put("type", "AnnotationPage")
                                .put("startIndex", 0)
                                .put("items", items))
                .text();
    }

    private static JsonObject annotation(DrawnRow row) {
        List<JsonObject> bodies = new ArrayList<>();
        bodies.add(body("classifying", row.kind()));
        row.zone().ifPresent(zone -> bodies.add(body("tagging", zone)));
        row.words().ifPresent(words -> bodies.add(body("describing", words)));
        JsonObject cells = new JsonObject().put(PREFIX + "table", row.table());
        row.beside().forEach((column, cell) -> cells.put(PREFIX + column, cell));
        return new JsonObject()
                .put("id", "urn:quarterlight:" + row.id())
                .put("type", "Annotation")
                .put("motivation", row.table().equals(DrawnRow.TRACES) ? "classifying" : "describing")
                .put("body", bodies)
                .put("target", new JsonObject().put("source", source(row)).put("selector", selector(row)))
                .put(ROW, cells);
    }

    private static JsonObject body(String purpose, String value) {
        return new JsonObject()
                .put("type", "TextualBody")
                .put("purpose", purpose)
                .put("format", "text/plain")
                .put("value", value);
    }

    private static JsonObject source(DrawnRow row) {
        String name = URLEncoder.encode(row.photo().file().name(), StandardCharsets.UTF_8)
                .replace("+", "%20");
        return new JsonObject()
                .put("id", name)
                .put("type", row.photo().file().kind().word().equals("film") ? "Video" : "Image")
                .put(PREFIX + "sha256", row.photo().file().sha256().hex());
    }

    private static JsonObject selector(DrawnRow row) {
        JsonObject drawn = new JsonObject()
                .put("type", "SvgSelector")
                .put(
                        "value",
                        "<svg xmlns=\"http://www.w3.org/2000/svg\"><path fill-rule=\"evenodd\" d=\"" + path(row.shape())
                                + "\"/></svg>");
        String moment = row.cells().get(MOMENT);
        return moment == null
                ? drawn
                : new JsonObject()
                        .put("type", "FragmentSelector")
                        .put("conformsTo", "http://www.w3.org/TR/media-frags/")
                        .put("value", "t=" + moment)
                        .put("refinedBy", drawn);
    }

    /** A path of straight lines; closed rings end with Z and do not repeat their first point. */
    private static String path(DrawnShape shape) {
        return shape.rings().stream()
                .map(ring -> {
                    List<DrawnShape.Pixel> points = shape.isArea() ? ring.subList(0, ring.size() - 1) : ring;
                    return points.stream()
                            .map(DrawnShape.Pixel::text)
                            .collect(Collectors.joining(" L ", "M ", shape.isArea() ? " Z" : ""));
                })
                .collect(Collectors.joining(" "));
    }
}
