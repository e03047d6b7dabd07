package quarterlight.table.drawn;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import quarterlight.table.json.JsonObject;
import quarterlight.visit.photo.Photo;

/**
 * Drawings as the object detection form of COCO: images, categories, and annotations with segmentation, box and area. Source: "Microsoft COCO: Common Objects
 * in Context", T.-Y. Lin and others, 2014, and cocodataset.org, "Data format"; from memory. Arrows, lines and texts are keypoints. A
 * segmentation has no inner rings, so each is joined to the outer ring by a cut of no width, and the outline stands under {@code attributes} as it was drawn.
 */
public final class CocoText {
    private static final List<String> ENDS = List.of("from", "to");
    private static final int SEEN = 2;

    private CocoText() {}

    public static String of(Drawings drawings) {
        Map<String, Integer> categories = new LinkedHashMap<>();
        drawings.rows().forEach(row -> categories.putIfAbsent(category(row), categories.size() + 1));
        List<JsonObject> annotations = new ArrayList<>();
        for (DrawnRow row : drawings.rows()) {
            annotations.add(annotation(annotations.size() + 1, row, categories.get(category(row))));
        }
        return new JsonObject()
                .put("info", new JsonObject().put("description", "Outlines and notes: " + drawings.car()))
                .put("images", drawings.photos().stream().map(CocoText::image).toList())
                .put(
                        "categories",
                        categories.entrySet().stream()
                                .map(entry -> category(entry.getKey(), entry.getValue()))
                                .toList())
                .put("annotations", annotations)
                .text();
    }

    private static String category(DrawnRow row) {
        return row.table() + "/" + row.kind();
    }

    private static JsonObject category(String name, int id) {
        String table = name.substring(0, name.indexOf('/'));
        String kind = name.substring(name.indexOf('/') + 1);
        JsonObject category = new JsonObject().put("id", id).put("name", kind).put("supercategory", table);
        if (table.equals(DrawnRow.NOTES) && !kind.equals("box")) {
            category.put("keypoints", kind.equals("text") ? ENDS.subList(0, 1) : ENDS)
                    .put("skeleton", kind.equals("text") ? List.of() : List.of(List.of(1, 2)));
        }
        return category;
    }

    private static JsonObject image(Photo photo) {
        return new JsonObject()
                .put("id", photo.id().value())
                .put("file_name", photo.file().name())
                .put("width", photo.file().width())
                .put("height", photo.file().height())
                .put("sha256", photo.file().sha256().hex());
    }

    private static JsonObject annotation(int id, DrawnRow row, int category) {
        DrawnShape shape = row.shape();
        JsonObject annotation = new JsonObject()
                .put("id", id)
                .put("image_id", row.photo().id().value())
                .put("category_id", category)
                .put("iscrowd", 0)
                .put("segmentation", shape.isArea() ? List.of(numbers(keyhole(shape))) : List.of())
                .put("bbox", shape.box())
                .put("area", shape.area());
        if (!shape.isArea()) {
            annotation
                    .put("num_keypoints", shape.outer().size())
                    .put(
                            "keypoints",
                            shape.outer().stream()
                                    .flatMap(point -> Stream.<Object>of(point.x(), point.y(), SEEN))
                                    .toList());
        }
        JsonObject attributes = new JsonObject().put("table", row.table());
        row.beside().forEach(attributes::put);
        if (shape.rings().size() > 1) {
            attributes.put(DrawnRow.OUTLINE, shape.cell());
        }
        return annotation.put("attributes", attributes);
    }

    /** The outer ring without its repeated end; inner rings joined to it where it begins. */
    private static List<DrawnShape.Pixel> keyhole(DrawnShape shape) {
        List<DrawnShape.Pixel> outer = shape.outer();
        List<DrawnShape.Pixel> points = new ArrayList<>(outer.subList(0, outer.size() - 1));
        for (List<DrawnShape.Pixel> inner :
                shape.rings().subList(1, shape.rings().size())) {
            points.add(outer.get(0));
            points.addAll(inner);
        }
        if (shape.rings().size() > 1) {
            points.add(outer.get(0));
        }
        return points;
    }

    private static List<Object> numbers(List<DrawnShape.Pixel> points) {
        return points.stream()
                .flatMap(point -> Stream.<Object>of(point.x(), point.y()))
                .toList();
    }
}
