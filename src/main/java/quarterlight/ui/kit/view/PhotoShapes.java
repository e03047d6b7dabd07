package quarterlight.ui.kit.view;

import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.photo.PhotoId;

/** Outlines and points of a photo as shapes to be drawn, and the scale that a photo has. Pure functions. */
public final class PhotoShapes {
    private PhotoShapes() {}

    /** The scale that was set on a photo last, for a note or a trace. */
    public static Optional<PhotoScale> scale(VisitRecord visit, PhotoId photo) {
        return Stream.concat(
                        visit.traces().stream()
                                .filter(row -> row.value().photo().equals(photo))
                                .map(row -> row.value().scale()),
                        visit.photoNotes().stream()
                                .filter(row -> row.value().photo().equals(photo))
                                .flatMap(row -> row.value().scale().stream()))
                .reduce((earlier, later) -> later);
    }

    public static PixelPoint pixel(Point2D p) {
        return new PixelPoint(p.getX(), p.getY());
    }

    /** The rings as one path, filled by the even-odd rule. */
    public static Path2D path(Outline outline) {
        Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        List<List<PixelPoint>> rings = new ArrayList<>(List.of(outline.shell()));
        rings.addAll(outline.holes());
        for (List<PixelPoint> ring : rings) {
            path.moveTo(ring.get(0).x(), ring.get(0).y());
            ring.stream().skip(1).forEach(p -> path.lineTo(p.x(), p.y()));
            path.closePath();
        }
        return path;
    }
}
