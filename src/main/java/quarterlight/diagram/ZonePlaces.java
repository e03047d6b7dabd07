package quarterlight.diagram;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;
import quarterlight.car.View;
import quarterlight.car.ZoneId;
import quarterlight.visit.ViewPoint;

/** Where the middle of each zone is, as far as nothing lies over it. Immutable; computed once, about as costly as a redraw. */
public final class ZonePlaces {
    private static final double SIMPLER_MM = 4;

    private final Map<Key, Place> places;

    private record Key(View view, ZoneId zone) {}

    /**
     * The middle of a zone in a view.
     *
     * @param xMm center of the largest circle in the part that can be seen
     * @param radiusMm radius of that circle
     * @param seen the part of the zone over which no other zone is drawn, mm of the view
     */
    public record Place(double xMm, double yMm, double radiusMm, Geometry seen) {}

    private ZonePlaces(Map<Key, Place> places) {
        this.places = places;
    }

    public static ZonePlaces of(BodyDiagram diagram) {
        Map<Key, Place> places = new HashMap<>();
        for (ViewDrawing view : diagram.views()) {
            List<DiagramShape> shapes = view.zones();
            List<Geometry> areas = shapes.stream().map(ZonePlaces::simpler).toList();
            for (int i = 0; i < shapes.size(); i++) {
                Place place = place(seen(i, shapes, areas));
                places.merge(
                        new Key(view.view(), shapes.get(i).zone().orElseThrow()),
                        place,
                        (a, b) -> a.radiusMm() >= b.radiusMm() ? a : b);
            }
        }
        return new ZonePlaces(Map.copyOf(places));
    }

    /** The middle of a zone in a view, if the view shows it. */
    public Optional<Place> place(View view, ZoneId zone) {
        return Optional.ofNullable(places.get(new Key(view, zone)));
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

    private static Geometry simpler(DiagramShape shape) {
        Geometry polygon = shape.outline().polygon();
        Geometry simple = polygon.isValid() ? DouglasPeuckerSimplifier.simplify(polygon, SIMPLER_MM) : polygon;
        if (simple.getArea() < 0.9 * polygon.getArea()) {
            simple = polygon;
        }
        return simple.isValid() ? simple : GeometryFixer.fix(simple);
    }

    private static Geometry seen(int index, List<DiagramShape> shapes, List<Geometry> areas) {
        Geometry own = areas.get(index);
        List<Geometry> above = new ArrayList<>();
        for (int i = index + 1; i < areas.size(); i++) {
            boolean other = !shapes.get(i).zone().equals(shapes.get(index).zone());
            if (other && areas.get(i).getEnvelopeInternal().intersects(own.getEnvelopeInternal())) {
                above.add(areas.get(i));
            }
        }
        if (above.isEmpty()) {
            return own;
        }
        Geometry left = own.difference(UnaryUnionOp.union(above));
        return left.getArea() > 0.02 * own.getArea() ? left : own;
    }

    private static Place place(Geometry seen) {
        Geometry largest = seen;
        for (int i = 0; i < seen.getNumGeometries(); i++) {
            Geometry part = seen.getGeometryN(i);
            if (i == 0 || part.getArea() > largest.getArea()) {
                largest = part;
            }
        }
        if (!(largest instanceof Polygon) || !(largest.getArea() > 0)) {
            Point point = seen.isEmpty() ? seen.getFactory().createPoint() : seen.getInteriorPoint();
            return new Place(point.isEmpty() ? 0 : point.getX(), point.isEmpty() ? 0 : point.getY(), 0, seen);
        }
        double tolerance = Math.max(1, Math.sqrt(largest.getArea()) / 40);
        MaximumInscribedCircle circle = new MaximumInscribedCircle(largest, tolerance);
        Point center = circle.getCenter();
        return new Place(center.getX(), center.getY(), circle.getRadiusLine().getLength(), seen);
    }
}
