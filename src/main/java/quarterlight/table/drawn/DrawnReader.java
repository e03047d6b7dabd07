package quarterlight.table.drawn;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import quarterlight.table.text.FormulaCell;

/**
 * Reads drawings back: of a document in one of the three forms, the rows of one table, as the CSV of that table, which then takes the way of every table.
 * Properties that are no columns of the table are left alone, since other programs add their own.
 */
public final class DrawnReader {
    private static final Map<String, Set<String>> COLUMNS = Map.of(
            DrawnRow.TRACES,
            new LinkedHashSet<>(List.of("photo", "kind", "outline", "scale", "zone", "patch", "note")),
            DrawnRow.NOTES,
            new LinkedHashSet<>(List.of("photo", "shape", "points", "text", "scale", "at")));
    private static final Pattern PATH = Pattern.compile("\\bd=\"([^\"]*)\"");
    private static final ObjectMapper JSON =
            new ObjectMapper().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);

    private DrawnReader() {}

    /** Whether bytes may be such a document: they begin like an object of JSON. */
    public static boolean isOne(byte[] bytes) {
        for (byte b : bytes) {
            if (b == '{') {
                return true;
            }
            boolean skipped = b == ' '
                    || b == '\t'
                    || b == '\r'
                    || b == '\n'
                    || b == (byte) 0xEF
                    || b == (byte) 0xBB
                    || b == (byte) 0xBF;
            if (!skipped) {
                return false;
            }
        }
        return false;
    }

    /**
     * The rows of a table as CSV; a header alone if the document has none of them.
     *
     * @return empty if the document is in none of the forms, or the table is not one of drawings
     * @throws IOException if the bytes are no JSON
     */
    public static Optional<String> csv(byte[] bytes, String table) throws IOException {
        Set<String> columns = COLUMNS.get(table);
        JsonNode document;
        try {
            document = JSON.readTree(bytes);
        } catch (JsonProcessingException e) {
            throw new IOException(e.getOriginalMessage(), e);
        }
        Optional<List<Map<String, String>>> rows = rows(document, table);
        if (columns == null || rows.isEmpty()) {
            return Optional.empty();
        }
        StringBuilder out = new StringBuilder(CSVFormat.RFC4180.format(columns.toArray())).append("\r\n");
        for (Map<String, String> row : rows.get()) {
            Object[] cells = columns.stream()
                    .map(column -> FormulaCell.guarded(row.getOrDefault(column, "")))
                    .toArray();
            out.append(CSVFormat.RFC4180.format(cells)).append("\r\n");
        }
        return Optional.of(out.toString());
    }

    private static Optional<List<Map<String, String>>> rows(JsonNode document, String table) {
        List<Map<String, String>> rows = new ArrayList<>();
        if (document.path("type").asText().equals("FeatureCollection")) {
            for (JsonNode feature : document.path("features")) {
                add(rows, table, cells(feature.path("properties"), ""), geometry(feature.path("geometry")));
            }
        } else if (document.path("type").asText().equals("AnnotationCollection")) {
            for (JsonNode one : document.path("first").path("items")) {
                add(rows, table, cells(one.path(AnnotationText.ROW), AnnotationText.PREFIX), selected(one));
            }
        } else if (document.path("annotations").isArray()
                && document.path("images").isArray()) {
            for (JsonNode one : document.path("annotations")) {
                add(rows, table, cells(one.path("attributes"), ""), segmented(one));
            }
        } else {
            return Optional.empty();
        }
        return Optional.of(rows);
    }

    private static void add(
            List<Map<String, String>> rows, String table, Map<String, String> cells, Optional<DrawnShape> shape) {
        String own = cells.getOrDefault("table", DrawnRow.TRACES);
        if (own.equals(table)) {
            String column = table.equals(DrawnRow.TRACES) ? DrawnRow.OUTLINE : DrawnRow.POINTS;
            shape.ifPresent(drawn -> cells.putIfAbsent(column, drawn.cell()));
            rows.add(cells);
        }
    }

    private static Map<String, String> cells(JsonNode properties, String prefix) {
        Map<String, String> cells = new LinkedHashMap<>();
        properties.properties().forEach(field -> {
            JsonNode value = field.getValue();
            if (field.getKey().startsWith(prefix) && value.isValueNode() && !value.isNull()) {
                cells.put(field.getKey().substring(prefix.length()), value.asText());
            }
        });
        return cells;
    }

    private static Optional<DrawnShape> geometry(JsonNode geometry) {
        JsonNode at = geometry.path("coordinates");
        return switch (geometry.path("type").asText()) {
            case "Polygon" -> {
                List<List<DrawnShape.Pixel>> rings = new ArrayList<>();
                at.forEach(ring -> rings.add(pairs(ring)));
                yield DrawnShape.read(DrawnShape.Kind.OUTLINE, rings);
            }
            case "LineString" -> DrawnShape.read(DrawnShape.Kind.LINE, List.of(pairs(at)));
            case "Point" -> pair(at).flatMap(point -> DrawnShape.read(DrawnShape.Kind.POINT, List.of(List.of(point))));
            default -> Optional.empty();
        };
    }

    private static List<DrawnShape.Pixel> pairs(JsonNode list) {
        List<DrawnShape.Pixel> points = new ArrayList<>();
        list.forEach(point -> pair(point).ifPresent(points::add));
        return points;
    }

    private static Optional<DrawnShape.Pixel> pair(JsonNode point) {
        return point.path(0).isNumber() && point.path(1).isNumber()
                ? Optional.of(new DrawnShape.Pixel(
                        point.get(0).decimalValue(), point.get(1).decimalValue()))
                : Optional.empty();
    }

    /** The ring of a segmentation, closed again; a box where there is none; keypoints of a line. */
    private static Optional<DrawnShape> segmented(JsonNode annotation) {
        JsonNode points = annotation.path("keypoints");
        if (points.size() > 0) {
            return DrawnShape.read(DrawnShape.Kind.LINE, List.of(every(points, 3)));
        }
        List<DrawnShape.Pixel> ring = every(annotation.path("segmentation").path(0), 2);
        if (!ring.isEmpty() && !ring.get(0).equals(ring.get(ring.size() - 1))) {
            ring.add(ring.get(0));
        }
        return DrawnShape.read(DrawnShape.Kind.OUTLINE, List.of(ring));
    }

    private static List<DrawnShape.Pixel> every(JsonNode numbers, int step) {
        List<DrawnShape.Pixel> points = new ArrayList<>();
        for (int i = 0; i + 1 < numbers.size(); i += step) {
            points.add(new DrawnShape.Pixel(
                    numbers.get(i).decimalValue(), numbers.get(i + 1).decimalValue()));
        }
        return points;
    }

    /** The path of the SVG selector of an annotation, if it is one of straight lines. */
    private static Optional<DrawnShape> selected(JsonNode annotation) {
        JsonNode selector = annotation.path("target").path("selector");
        JsonNode drawn = selector.has("refinedBy") ? selector.path("refinedBy") : selector;
        Matcher path = PATH.matcher(drawn.path("value").asText());
        if (!path.find()) {
            return Optional.empty();
        }
        boolean closed = path.group(1).contains("Z");
        List<List<DrawnShape.Pixel>> rings = new ArrayList<>();
        for (String part : path.group(1).split("[MZ]")) {
            List<DrawnShape.Pixel> points = points(part);
            if (!points.isEmpty() && closed) {
                points.add(points.get(0));
            }
            if (!points.isEmpty()) {
                rings.add(points);
            }
        }
        return DrawnShape.read(closed ? DrawnShape.Kind.OUTLINE : DrawnShape.Kind.LINE, rings);
    }

    private static List<DrawnShape.Pixel> points(String part) {
        List<DrawnShape.Pixel> points = new ArrayList<>();
        String[] numbers = part.replace('L', ' ').strip().split("[\\s,]+");
        try {
            for (int i = 0; i + 1 < numbers.length; i += 2) {
                points.add(new DrawnShape.Pixel(new BigDecimal(numbers[i]), new BigDecimal(numbers[i + 1])));
            }
        } catch (NumberFormatException e) {
            return new ArrayList<>();
        }
        return points;
    }
}
