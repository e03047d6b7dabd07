package quarterlight.finish.place;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.algorithm.construct.LargestEmptyCircle;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import quarterlight.units.Area;
import quarterlight.visit.pin.ViewPoint;

/**
 * Where on a panel a round patch of filler, 10 cm across, could lie with no spot on it. Its middle lies anywhere on the panel,
 * equally likely; a spot stands on it if it is 5 cm from the middle or nearer. So the middles that a spot rules out are a disc
 * around it, and those of several spots the union of their discs, cut off at the panel's outline.
 * <p>Distances are those of the view; the part of the panel that turns away from it counts by its area as not reached.
 */
public final class PatchPlaces {
    /** Half the width of the patch, mm. */
    static final double RADIUS_MM = 50;
    /** Share of the places at which a patch is missed however many spots there are: places are set by eye. Judgement. */
    static final double LEAST_MISSED = .01;

    private static final GeometryFactory FACTORY = new GeometryFactory();
    /** Segments of a quarter circle: the area of a disc is then right to 1 in 1,000. */
    private static final int QUADRANT = 32;

    private static final double TOLERANCE_MM = 5;
    /** How far from the edge spots belong on a panel narrower than two patches: this share of half its width. */
    private static final double NARROW = .5;

    private PatchPlaces() {}

    /**
     * The share of the patch's places at which no spot stands on it.
     *
     * @param area nominal area of the panel, above 0
     * @param outline of the panel; without it all spots lie anywhere
     * @param spots how many spots there are, with and without a place
     * @param places known places of spots; those in another view than the outline's count as anywhere
     * @return {@value #LEAST_MISSED} to 1
     */
    public static double missed(Area area, Optional<PanelOutline> outline, int spots, List<ViewPoint> places) {
        List<Coordinate> known = outline.map(panel -> onPanel(panel, places)).orElse(List.of());
        double beside = known.isEmpty() ? 1 : 1 - ruledOut(outline.orElseThrow().shape(), known) / area.mm2();
        double anywhere = Math.max(0, 1 - Math.PI * RADIUS_MM * RADIUS_MM / area.mm2());
        return Math.max(LEAST_MISSED, beside * Math.pow(anywhere, spots - known.size()));
    }

    /** Of how many spots the place on the panel is known. */
    public static int placed(PanelOutline panel, List<ViewPoint> places) {
        return onPanel(panel, places).size();
    }

    private static List<Coordinate> onPanel(PanelOutline panel, List<ViewPoint> places) {
        return places.stream().map(panel::mm).flatMap(Optional::stream).toList();
    }

    /** Area of the middles from which the patch reaches a spot, mm2. */
    static double ruledOut(Geometry shape, List<Coordinate> spots) {
        List<Geometry> discs = new ArrayList<>();
        for (Coordinate spot : spots) {
            discs.add(FACTORY.createPoint(spot).buffer(RADIUS_MM, QUADRANT));
        }
        return UnaryUnionOp.union(discs).intersection(shape).getArea();
    }

    /**
     * Where further spots find a patch that all others have missed: each in the middle of the widest part of the panel without
     * a spot, half a patch from the edge where the panel is wide enough. Fewer than asked for where nothing is left to find.
     *
     * @param places of the spots so far; those in another view are passed over
     */
    public static List<ViewPoint> next(PanelOutline panel, List<ViewPoint> places, int count) {
        Geometry inner = panel.shape().buffer(-Math.min(RADIUS_MM, NARROW * widest(panel.shape())));
        List<Coordinate> taken = new ArrayList<>(onPanel(panel, places));
        List<ViewPoint> found = new ArrayList<>();
        while (found.size() < count) {
            Coordinate next = farthest(inner, taken);
            if (!taken.isEmpty() && nearest(next, taken) < RADIUS_MM) {
                break;
            }
            taken.add(next);
            found.add(panel.place(next));
        }
        return found;
    }

    /** Radius of the largest circle within the panel. */
    private static double widest(Geometry shape) {
        return MaximumInscribedCircle.getRadiusLine(shape, TOLERANCE_MM).getLength();
    }

    private static Coordinate farthest(Geometry within, List<Coordinate> spots) {
        return spots.isEmpty()
                ? MaximumInscribedCircle.getCenter(within, TOLERANCE_MM).getCoordinate()
                : LargestEmptyCircle.getCenter(
                                FACTORY.createMultiPointFromCoords(spots.toArray(Coordinate[]::new)),
                                within,
                                TOLERANCE_MM)
                        .getCoordinate();
    }

    private static double nearest(Coordinate from, List<Coordinate> spots) {
        return spots.stream().mapToDouble(from::distance).min().orElse(Double.POSITIVE_INFINITY);
    }
}
