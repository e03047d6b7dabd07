package quarterlight.diagram;

import java.awt.geom.Rectangle2D;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.locationtech.jts.geom.Point;
import quarterlight.car.View;
import quarterlight.car.ZoneId;
import quarterlight.visit.pin.ViewPoint;

/** Where the middle of each zone is, as far as nothing lies over it. For any thread; computed once for each diagram. */
public final class ZonePlaces {
    /** A zone of which no more than this share can be seen counts as hidden. */
    private static final double HIDDEN = 0.02;

    private final BodyDiagram diagram;
    private Optional<Map<Key, Place>> known = Optional.empty();

    private record Key(View view, ZoneId zone) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Key key && key.view == view && key.zone.equals(zone);
        }

        @Override
        public int hashCode() {
            return Objects.hash(view, zone);
        }
    }

    /**
     * The middle of a zone in a view.
     *
     * @param xMm center of the largest circle in the part that can be seen
     * @param radiusMm radius of that circle
     * @param seen the part of the zone over which no other zone is drawn
     */
    public record Place(double xMm, double yMm, double radiusMm, Seen seen) {}

    /** The part of a zone over which no other zone is drawn, to the nearest few mm. Immutable. */
    public static final class Seen {
        private final SeenMap map;
        private final int number;
        private final Rectangle2D box;

        private Seen(SeenMap map, int number, Rectangle2D box) {
            this.map = map;
            this.number = number;
            this.box = box;
        }

        /** What it lies in, mm of the view. */
        public Rectangle2D box() {
            return box.getBounds2D();
        }

        /** Whether a rectangle in mm of the view lies wholly in it. */
        public boolean covers(Rectangle2D rectangle) {
            return map.covers(number, rectangle);
        }
    }

    ZonePlaces(BodyDiagram diagram) {
        this.diagram = diagram;
    }

    public static ZonePlaces of(BodyDiagram diagram) {
        ZonePlaces places = diagram.places();
        places.compute();
        return places;
    }

    /** Computes them now if nobody has asked yet, so that those who ask later need not wait. */
    public void compute() {
        all();
    }

    /** Computes them, which takes a moment, when the first is asked for; others who ask wait. */
    public static ZonePlaces whenAsked(BodyDiagram diagram) {
        return diagram.places();
    }

    private synchronized Map<Key, Place> all() {
        if (known.isEmpty()) {
            Map<Key, Place> places = new ConcurrentHashMap<>();
            diagram.views().parallelStream().forEach(view -> places(view)
                    .forEach((zone, place) -> places.put(new Key(view.view(), zone), place)));
            known = Optional.of(Map.copyOf(places));
        }
        return known.get();
    }

    private static Map<ZoneId, Place> places(ViewDrawing view) {
        List<DiagramShape> shapes = view.zones();
        List<ZoneId> zones = shapes.stream()
                .map(shape -> shape.zone().orElseThrow())
                .distinct()
                .toList();
        int[] numbers = shapes.stream()
                .mapToInt(shape -> zones.indexOf(shape.zone().orElseThrow()) + 1)
                .toArray();
        SeenMap map = new SeenMap(view, shapes, numbers);
        SeenMap.Part[] parts = map.parts(zones.size());
        Map<ZoneId, Place> places = new HashMap<>();
        for (int i = 0; i < zones.size(); i++) {
            List<DiagramShape> own = view.outlinesOf(zones.get(i));
            double whole =
                    own.stream().mapToDouble(shape -> shape.outline().area()).sum();
            places.put(
                    zones.get(i),
                    parts[i + 1].areaMm2() > HIDDEN * whole ? place(map, i + 1, parts[i + 1]) : alone(view, own));
        }
        return places;
    }

    private static Place place(SeenMap map, int number, SeenMap.Part part) {
        return new Place(part.xMm(), part.yMm(), part.radiusMm(), new Seen(map, number, part.box()));
    }

    /** Of a zone that others hide: as if they were not there; of one thinner than a cell, a point on it. */
    private static Place alone(ViewDrawing view, List<DiagramShape> own) {
        int[] ones = new int[own.size()];
        Arrays.fill(ones, 1);
        SeenMap map = new SeenMap(view, own, ones);
        SeenMap.Part part = map.parts(1)[1];
        if (part.areaMm2() > 0) {
            return place(map, 1, part);
        }
        Point point = own.get(0).outline().polygon().getInteriorPoint();
        double x = point.isEmpty() ? 0 : point.getX();
        double y = point.isEmpty() ? 0 : point.getY();
        return new Place(x, y, 0, new Seen(map, 1, new Rectangle2D.Double(x, y, 0, 0)));
    }

    /** The middle of a zone in a view, if the view shows it. */
    public Optional<Place> place(View view, ZoneId zone) {
        return Optional.ofNullable(all().get(new Key(view, zone)));
    }

    /** A point for a zone where none was recorded, in the first view that shows it best (the largest circle). */
    public Optional<ViewPoint> pointFor(BodyDiagram diagram, ZoneId zone) {
        Optional<ViewDrawing> best = Optional.empty();
        double most = -1;
        for (View view : diagram.viewsOf(zone)) {
            double radius = place(view, zone).map(Place::radiusMm).orElse(-1.0);
            if (radius > most) {
                most = radius;
                best = diagram.view(view);
            }
        }
        return best.flatMap(view -> pointFor(view, zone));
    }

    /** A point for a zone in a given view, if the view shows it. */
    public Optional<ViewPoint> pointFor(ViewDrawing view, ZoneId zone) {
        return place(view.view(), zone)
                .map(place -> new ViewPoint(
                        view.view(),
                        Math.min(1, Math.max(0, place.xMm() / view.widthMm())),
                        Math.min(1, Math.max(0, place.yMm() / view.heightMm()))));
    }
}
