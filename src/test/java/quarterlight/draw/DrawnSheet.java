package quarterlight.draw;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.units.Worded;

/** A diagram file as a stranger would read it: by text alone, without the code that wrote it. */
record DrawnSheet(String svg, List<Drawn> paths) {
    static final Path DIAGRAMS =
            Path.of(System.getProperty("quarterlight.basedir", ".")).resolve("diagrams");
    private static final Pattern VIEW = Pattern.compile("<g data-view=\"([a-z]+)\"[^>]*>(.*?)</g>", Pattern.DOTALL);
    private static final Pattern PATH = Pattern.compile("<path ([^>]*)/>");
    private static final Pattern ATTRIBUTE = Pattern.compile("([a-z-]+)=\"([^\"]*)\"");
    private static final GeometryFactory FACTORY = new GeometryFactory();

    /** Files that were read already; they do not change while tests run. */
    private static final Map<BodyStyle, DrawnSheet> READ = new ConcurrentHashMap<>();

    static DrawnSheet of(BodyStyle style) {
        return READ.computeIfAbsent(style, which -> {
            try {
                String svg = Files.readString(DIAGRAMS.resolve(which.word() + ".svg"));
                return new DrawnSheet(svg, paths(svg));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }

    record Drawn(String view, Map<String, String> attributes, List<Polygon> rings) {
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

        Geometry area() {
            Geometry area = rings.get(0);
            for (Polygon ring : rings.subList(1, rings.size())) {
                area = area.symDifference(ring);
            }
            return area;
        }
    }

    private static List<Drawn> paths(String svg) {
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
                paths.add(new Drawn(views.group(1), attributes, rings(attributes)));
            }
        }
        return paths;
    }

    private static List<Polygon> rings(Map<String, String> attributes) {
        String d = attributes.get("d");
        return d.contains("Z")
                ? Arrays.stream(d.split("Z")).map(DrawnSheet::ring).toList()
                : List.of();
    }

    private static Polygon ring(String part) {
        String[] points = part.replaceAll("[ML]", " ").trim().split("\\s+");
        Coordinate[] ring = new Coordinate[points.length + 1];
        for (int i = 0; i < points.length; i++) {
            String[] pair = points[i].split(",");
            ring[i] = new Coordinate(Double.parseDouble(pair[0]), Double.parseDouble(pair[1]));
        }
        ring[points.length] = ring[0];
        return FACTORY.createPolygon(ring);
    }

    /** Tells some of its paths from others by their places in the file, without comparing points. */
    List<?> key(List<Drawn> some) {
        Set<Drawn> chosen = Collections.newSetFromMap(new IdentityHashMap<>());
        chosen.addAll(some);
        return List.of(
                svg.hashCode(),
                IntStream.range(0, paths.size())
                        .filter(at -> chosen.contains(paths.get(at)))
                        .boxed()
                        .toList());
    }

    List<Drawn> zonesOf(Body body) {
        return paths().stream()
                .filter(path -> path.kind().equals("zone") && path.belongsTo(body))
                .toList();
    }
}
