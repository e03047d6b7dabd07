package quarterlight.table.drawn;

import java.util.List;
import java.util.Map;
import quarterlight.table.json.JsonObject;

/**
 * Drawings as GeoJSON. Source: RFC 7946, "The GeoJSON Format", sections 3 and 6.1 (foreign members). Adapted: coordinates are pixels of the upright photo, as
 * the member {@code coordinate_space} says, since a photo has no place on the globe; rings keep the order in which they were drawn.
 */
public final class GeoJsonText {
    static final String SPACE = "pixels of the upright photo, origin top left, y down";

    private GeoJsonText() {}

    public static String of(Drawings drawings) {
        return new JsonObject()
                .put("type", "FeatureCollection")
                .put("coordinate_space", SPACE)
                .put(
                        "features",
                        drawings.rows().stream().map(GeoJsonText::feature).toList())
                .text();
    }

    private static JsonObject feature(DrawnRow row) {
        JsonObject properties = new JsonObject()
                .put("table", row.table())
                .put("sha256", row.photo().file().sha256().hex())
                .put("width_px", row.photo().file().width())
                .put("height_px", row.photo().file().height());
        for (Map.Entry<String, String> cell : row.beside().entrySet()) {
            properties.put(cell.getKey(), cell.getValue());
        }
        return new JsonObject()
                .put("type", "Feature")
                .put("id", row.id())
                .put("geometry", geometry(row.shape()))
                .put("properties", properties);
    }

    private static JsonObject geometry(DrawnShape shape) {
        return switch (shape.kind()) {
            case POINT ->
                new JsonObject()
                        .put("type", "Point")
                        .put("coordinates", pair(shape.outer().get(0)));
            case LINE -> new JsonObject().put("type", "LineString").put("coordinates", pairs(shape.outer()));
            case OUTLINE, BOX ->
                new JsonObject()
                        .put("type", "Polygon")
                        .put(
                                "coordinates",
                                shape.rings().stream().map(GeoJsonText::pairs).toList());
        };
    }

    private static List<Object> pairs(List<DrawnShape.Pixel> points) {
        return points.stream().map(point -> (Object) pair(point)).toList();
    }

    private static List<Object> pair(DrawnShape.Pixel point) {
        return List.of(point.x(), point.y());
    }
}
