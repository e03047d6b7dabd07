package quarterlight.draw;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import quarterlight.car.Body;
import quarterlight.units.Worded;

/** A diagram file as a stranger would read it: by text alone, without the code that wrote it. */
record DrawnSheet(String svg) {
    static final Path DIAGRAMS =
            Path.of(System.getProperty("quarterlight.basedir", ".")).resolve("diagrams");
    private static final Pattern VIEW = Pattern.compile("<g data-view=\"([a-z]+)\"[^>]*>(.*?)</g>", Pattern.DOTALL);
    private static final Pattern PATH = Pattern.compile("<path ([^>]*)/>");
    private static final Pattern ATTRIBUTE = Pattern.compile("([a-z-]+)=\"([^\"]*)\"");
    private static final GeometryFactory FACTORY = new GeometryFactory();

    record Drawn(String view, Map<String, String> attributes) {
        String kind() {
            return attributes.get("class");
        }

        String zone() {
            return attributes.getOrDefault("data-zone", "");
        }

        boolean belongsTo(Body body) {
            return names("data-construction", body.construction()) && names("data-engine", body.engine());
        }

        private boolean names(String attribute, Worded word) {
            String words = attributes.get(attribute);
            return words == null || Arrays.asList(words.split(" ")).contains(word.word());
        }

        List<Polygon> rings() {
            List<Polygon> rings = new ArrayList<>();
            for (String part : attributes.get("d").split("Z")) {
                String[] points = part.replaceAll("[ML]", " ").trim().split("\\s+");
                Coordinate[] ring = new Coordinate[points.length + 1];
                for (int i = 0; i < points.length; i++) {
                    String[] pair = points[i].split(",");
                    ring[i] = new Coordinate(Double.parseDouble(pair[0]), Double.parseDouble(pair[1]));
                }
                ring[points.length] = ring[0];
                rings.add(FACTORY.createPolygon(ring));
            }
            return rings;
        }

        Geometry area() {
            Geometry area = FACTORY.createPolygon();
            for (Polygon ring : rings()) {
                area = area.symDifference(ring);
            }
            return area;
        }
    }

    List<Drawn> paths() {
        List<Drawn> paths = new ArrayList<>();
        Matcher views = VIEW.matcher(svg);
        while (views.find()) {
            Matcher elements = PATH.matcher(views.group(2));
            while (elements.find()) {
                Map<String, String> attributes = new LinkedHashMap<>();
                Matcher each = ATTRIBUTE.matcher(elements.group(1));
                while (each.find()) {
                    attributes.put(each.group(1), each.group(2));
                }
                paths.add(new Drawn(views.group(1), attributes));
            }
        }
        return paths;
    }

    List<Drawn> zonesOf(Body body) {
        return paths().stream()
                .filter(path -> path.kind().equals("zone") && path.belongsTo(body))
                .toList();
    }
}
