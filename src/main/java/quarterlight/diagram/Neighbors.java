package quarterlight.diagram;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import quarterlight.car.ZoneId;
import quarterlight.file.CsvShape;

/**
 * Which zones a person comes to next: those whose outlines touch in some view, and a short written list of other steps (hood to bay, door to
 * cabin, wheel to the rail behind it) in {@code steps.csv}. Symmetric; immutable.
 */
public final class Neighbors {
    /** Outlines this near each other touch, mm; a panel gap is drawn as one line, a rounded corner may leave a little. */
    static final double TOUCH_MM = 5;

    private final Map<ZoneId, Set<ZoneId>> next;

    private Neighbors(Map<ZoneId, Set<ZoneId>> next) {
        this.next = next;
    }

    /** The neighbors on a diagram. */
    public static Neighbors of(BodyDiagram diagram) {
        Map<ZoneId, Set<ZoneId>> next = new LinkedHashMap<>();
        diagram.zones().forEach(zone -> next.put(zone, new TreeSet<>()));
        diagram.views().forEach(view -> addTouching(view, next));
        for (List<ZoneId> step : steps()) {
            ZoneId a = step.get(0);
            ZoneId b = step.get(1);
            if (next.containsKey(a) && next.containsKey(b)) {
                join(next, a, b);
            }
        }
        next.replaceAll((zone, set) -> Collections.unmodifiableSet(set));
        return new Neighbors(Collections.unmodifiableMap(next));
    }

    /** The neighbors of a zone by id; none for a zone that the diagram does not draw. */
    public Set<ZoneId> of(ZoneId zone) {
        return next.getOrDefault(zone, Set.of());
    }

    /** All zones in drawing order with their neighbors. */
    public Map<ZoneId, Set<ZoneId>> map() {
        return next;
    }

    /** The zones in connected sets, the largest first; one set if a walk can reach all. */
    public List<Set<ZoneId>> islands() {
        List<Set<ZoneId>> islands = new ArrayList<>();
        Set<ZoneId> seen = new LinkedHashSet<>();
        for (ZoneId start : next.keySet()) {
            if (seen.contains(start)) {
                continue;
            }
            Set<ZoneId> island = new LinkedHashSet<>();
            Deque<ZoneId> open = new ArrayDeque<>(List.of(start));
            while (!open.isEmpty()) {
                ZoneId zone = open.pop();
                if (island.add(zone)) {
                    open.addAll(of(zone));
                }
            }
            seen.addAll(island);
            islands.add(island);
        }
        islands.sort((a, b) -> Integer.compare(b.size(), a.size()));
        return islands;
    }

    private static void addTouching(ViewDrawing view, Map<ZoneId, Set<ZoneId>> next) {
        List<DiagramShape> shapes = view.zones();
        List<Geometry> areas =
                shapes.stream().map(shape -> shape.outline().polygon()).toList();
        for (int i = 0; i < shapes.size(); i++) {
            Envelope near = new Envelope(areas.get(i).getEnvelopeInternal());
            near.expandBy(TOUCH_MM);
            for (int j = i + 1; j < shapes.size(); j++) {
                ZoneId a = shapes.get(i).zone().orElseThrow();
                ZoneId b = shapes.get(j).zone().orElseThrow();
                if (!a.equals(b)
                        && !next.get(a).contains(b)
                        && near.intersects(areas.get(j).getEnvelopeInternal())
                        && areas.get(i).isWithinDistance(areas.get(j), TOUCH_MM)) {
                    join(next, a, b);
                }
            }
        }
    }

    private static void join(Map<ZoneId, Set<ZoneId>> next, ZoneId a, ZoneId b) {
        next.get(a).add(b);
        next.get(b).add(a);
    }

    private static List<List<ZoneId>> steps() {
        CSVFormat format = CsvShape.withHeaderAndRemarks();
        try (InputStream in = Neighbors.class.getResourceAsStream("steps.csv")) {
            List<List<ZoneId>> steps = new ArrayList<>();
            for (CSVRecord row : format.parse(new InputStreamReader(in, StandardCharsets.UTF_8))) {
                steps.add(List.of(new ZoneId(row.get("from")), new ZoneId(row.get("to"))));
            }
            return steps;
        } catch (IOException e) {
            throw new UncheckedIOException("steps.csv cannot be read", e);
        }
    }
}
