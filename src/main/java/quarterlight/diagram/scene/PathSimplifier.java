package quarterlight.diagram.scene;

import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;

/** A path with the points left out that no eye can miss at the size shown; a third of them remains at window size. */
final class PathSimplifier {
    /** Farthest a left-out point may lie from the line that replaces it, px. */
    private static final double FARTHEST_PX = 0.07;

    private static final double FLATNESS_PX = 0.05;

    private PathSimplifier() {}

    static Path2D path(Path2D path) {
        Path2D.Double simple = new Path2D.Double(path.getWindingRule());
        List<Coordinate> run = new ArrayList<>();
        double[] c = new double[6];
        for (PathIterator it = path.getPathIterator(null, FLATNESS_PX); !it.isDone(); it.next()) {
            switch (it.currentSegment(c)) {
                case PathIterator.SEG_MOVETO -> {
                    append(simple, run);
                    run.add(new Coordinate(c[0], c[1]));
                }
                case PathIterator.SEG_CLOSE -> {
                    append(simple, run);
                    simple.closePath();
                }
                default -> run.add(new Coordinate(c[0], c[1]));
            }
        }
        append(simple, run);
        return simple;
    }

    private static void append(Path2D.Double simple, List<Coordinate> run) {
        if (run.isEmpty()) {
            return;
        }
        Coordinate[] points = run.toArray(Coordinate[]::new);
        if (points.length > 2) {
            points = DouglasPeuckerSimplifier.simplify(new GeometryFactory().createLineString(points), FARTHEST_PX)
                    .getCoordinates();
        }
        simple.moveTo(points[0].x, points[0].y);
        for (int i = 1; i < points.length; i++) {
            simple.lineTo(points[i].x, points[i].y);
        }
        run.clear();
    }
}
