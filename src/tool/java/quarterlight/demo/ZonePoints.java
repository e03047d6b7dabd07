package quarterlight.demo;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;

/**
 * Points inside the zones of the coupe's body diagram, each zone in the view that shows most of it. No two points of a zone
 * fall together. Without the diagram there are none.
 */
final class ZonePoints {
    private static final Pattern VIEW =
            Pattern.compile("<g [^>]*data-view=\"([a-z]+)\" data-width-mm=\"([0-9.]+)\" data-height-mm=\"([0-9.]+)\"");
    private static final Pattern ZONE = Pattern.compile("<path ([^>]*class=\"zone\"[^>]*)/>");
    private final Map<String, Place> places = new HashMap<>();
    private final Map<String, List<Coordinate>> taken = new HashMap<>();

    /** A zone as one view shows it. */
    private record Place(String view, double w, double h, Geometry outline) {}

    /** A point as fractions of its view. */
    record Spot(String view, String x, String y) {}

    static ZonePoints none() {
        return new ZonePoints();
    }

    static ZonePoints read(Path svg) throws IOException {
        ZonePoints points = new ZonePoints();
        if (!Files.exists(svg)) {
            return points;
        }
        String text = Files.readString(svg, StandardCharsets.UTF_8);
        for (String part : text.split("(?=<g [^>]*data-view=)")) {
            Matcher view = VIEW.matcher(part);
            if (view.find()) {
                points.add(view.group(1), Double.parseDouble(view.group(2)), Double.parseDouble(view.group(3)), part);
            }
        }
        return points;
    }

    private void add(String view, double w, double h, String part) {
        Matcher zone = ZONE.matcher(part);
        while (zone.find()) {
            String attributes = zone.group(1);
            Optional<String> construction = attribute(attributes, "data-construction");
            if (construction.isPresent() && !construction.get().contains("unibody")
                    || attribute(attributes, "data-engine")
                            .filter("rear"::equals)
                            .isPresent()) {
                continue;
            }
            String id = attribute(attributes, "data-zone").orElseThrow();
            Place place =
                    new Place(view, w, h, outline(attribute(attributes, "d").orElseThrow()));
            Place known = places.get(id);
            if (known == null || place.outline().getArea() > known.outline().getArea()) {
                places.put(id, place);
            }
        }
    }

    private static Optional<String> attribute(String attributes, String name) {
        Matcher m = Pattern.compile("(?:^|\\s)" + name + "=\"([^\"]*)\"").matcher(attributes);
        return m.find() ? Optional.of(m.group(1)) : Optional.empty();
    }

    /** The corners of a path; of a curve its end only, which is near enough to lie inside. */
    private static Geometry outline(String d) {
        GeometryFactory geometry = new GeometryFactory();
        List<Coordinate> ring = new ArrayList<>();
        Matcher command = Pattern.compile("([MLC])([^MLCZ]*)").matcher(d);
        while (command.find()) {
            if (command.group(1).equals("M") && !ring.isEmpty()) {
                break;
            }
            String[] n = command.group(2).strip().split("[ ,]+");
            int step = command.group(1).equals("C") ? 6 : 2;
            for (int i = step - 2; i + 1 < n.length; i += step) {
                ring.add(new Coordinate(Double.parseDouble(n[i]), Double.parseDouble(n[i + 1])));
            }
        }
        ring.add(new Coordinate(ring.get(0)));
        return geometry.createPolygon(ring.toArray(Coordinate[]::new)).buffer(0);
    }

    /** The next free point of the zone, or none if no view shows it. */
    Optional<Spot> next(String zone) {
        Place place = places.get(zone);
        if (place == null || place.outline().isEmpty()) {
            return Optional.empty();
        }
        List<Coordinate> used = taken.computeIfAbsent(zone, k -> new ArrayList<>());
        Coordinate best = place.outline().getInteriorPoint().getCoordinate();
        if (!used.isEmpty()) {
            best = farthest(place.outline(), used, best, zone.hashCode() + used.size() * 31L);
        }
        used.add(best);
        return Optional.of(
                new Spot(place.view(), Rows.number(best.x / place.w(), 4), Rows.number(best.y / place.h(), 4)));
    }

    private static Coordinate farthest(Geometry outline, List<Coordinate> used, Coordinate otherwise, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Envelope box = outline.getEnvelopeInternal();
        Coordinate best = otherwise;
        double most = -1;
        for (int i = 0; i < 60; i++) {
            Coordinate c = new Coordinate(
                    box.getMinX() + box.getWidth() * random.nextDouble(),
                    box.getMinY() + box.getHeight() * random.nextDouble());
            Point p = outline.getFactory().createPoint(c);
            double near = used.stream().mapToDouble(c::distance).min().orElse(0);
            double edge = outline.contains(p) ? outline.getBoundary().distance(p) : -1;
            double worth = edge < 0 ? -1 : Math.min(near, 3 * edge);
            if (worth > most) {
                most = worth;
                best = c;
            }
        }
        return best;
    }
}
