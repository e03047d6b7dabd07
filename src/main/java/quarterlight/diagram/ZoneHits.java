package quarterlight.diagram;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import quarterlight.car.ZoneId;
import quarterlight.visit.pin.ViewPoint;

/** Which zone a point of a view means. Pure functions. */
public final class ZoneHits {
    /** A thin zone takes at most this part of the mean width of the zone it lies on, so that the latter stays hittable too. */
    private static final double TOP_PER_REACH = 6;

    private ZoneHits() {}

    /**
     * The zone at a point: the topmost that holds it, else the one with the nearest outline within the tolerance. A zone thinner than twice
     * the tolerance (a drip rail, a molding) is widened to that width against zones of more than twice that width, so that it can be hit at all.
     *
     * @param xMm point in the view, mm from its left
     * @param yMm point in the view, mm from its top
     * @param toleranceMm how far off a hit may be: 6 px at the scale shown; 0 for none
     */
    public static Optional<ZoneId> at(ViewDrawing view, double xMm, double yMm, double toleranceMm) {
        return shapeAt(view, xMm, yMm, toleranceMm).flatMap(DiagramShape::zone);
    }

    /** The outline that {@link #at} means. */
    public static Optional<DiagramShape> shapeAt(ViewDrawing view, double xMm, double yMm, double toleranceMm) {
        List<DiagramShape> zones = view.zones();
        Optional<DiagramShape> top = topmost(zones, xMm, yMm);
        boolean mayYield = top.isEmpty() || top.get().outline().thickness() > 4 * toleranceMm;
        if (mayYield) {
            double most = top.map(shape -> shape.outline().thickness() / TOP_PER_REACH)
                    .orElse(toleranceMm);
            Optional<DiagramShape> thin = thinNearby(zones, xMm, yMm, toleranceMm, most);
            if (thin.isPresent()) {
                return thin;
            }
        }
        return top.isPresent() ? top : nearest(zones, xMm, yMm, toleranceMm);
    }

    /** The topmost zone at a recorded point, exactly; empty where no zone is drawn. */
    public static Optional<ZoneId> at(BodyDiagram diagram, ViewPoint point) {
        return diagram.view(point.view())
                .flatMap(view -> at(view, point.x() * view.widthMm(), point.y() * view.heightMm(), 0));
    }

    /** How far a recorded point lies outside a zone, mm; 0 inside it, empty if the view does not show the zone. */
    public static OptionalDouble distance(BodyDiagram diagram, ZoneId zone, ViewPoint point) {
        Optional<ViewDrawing> view = diagram.view(point.view());
        if (view.isEmpty()) {
            return OptionalDouble.empty();
        }
        double x = point.x() * view.get().widthMm();
        double y = point.y() * view.get().heightMm();
        return view.get().outlinesOf(zone).stream()
                .mapToDouble(shape ->
                        shape.outline().contains(x, y) ? 0 : shape.outline().distance(x, y))
                .min();
    }

    private static Optional<DiagramShape> topmost(List<DiagramShape> zones, double x, double y) {
        for (int i = zones.size() - 1; i >= 0; i--) {
            if (zones.get(i).outline().contains(x, y)) {
                return Optional.of(zones.get(i));
            }
        }
        return Optional.empty();
    }

    private static Optional<DiagramShape> thinNearby(
            List<DiagramShape> zones, double x, double y, double tolerance, double most) {
        Optional<DiagramShape> best = Optional.empty();
        double least = Double.POSITIVE_INFINITY;
        for (int i = zones.size() - 1; i >= 0; i--) {
            DiagramShape shape = zones.get(i);
            if (!shape.outline().isNearBounds(x, y, tolerance)) {
                continue;
            }
            double reach = Math.min(most, tolerance - shape.outline().thickness() / 2);
            double distance =
                    shape.outline().contains(x, y) ? 0 : shape.outline().distance(x, y);
            if (reach > 0 && distance <= reach && distance < least) {
                least = distance;
                best = Optional.of(shape);
            }
        }
        return best;
    }

    private static Optional<DiagramShape> nearest(List<DiagramShape> zones, double x, double y, double tolerance) {
        Optional<DiagramShape> best = Optional.empty();
        double least = tolerance;
        for (int i = zones.size() - 1; i >= 0; i--) {
            DiagramShape shape = zones.get(i);
            if (shape.outline().isNearBounds(x, y, tolerance)) {
                double distance = shape.outline().distance(x, y);
                if (distance < least || distance == least && best.isEmpty()) {
                    least = distance;
                    best = Optional.of(shape);
                }
            }
        }
        return best;
    }
}
