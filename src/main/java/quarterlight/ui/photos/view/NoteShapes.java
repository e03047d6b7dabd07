package quarterlight.ui.photos.view;

import java.awt.Rectangle;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.DrawnPart;
import quarterlight.ui.kit.view.PhotoShapes;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.annotation.HiddenRegion;
import quarterlight.visit.annotation.NoteShape;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PhotoNote;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Recorded;

/** Notes and hidden regions as shapes on a photo: made of two points, found under a point, moved. Pure functions. */
final class NoteShapes {
    private NoteShapes() {}

    static List<Recorded<PhotoNote>> notes(VisitRecord visit, PhotoId photo) {
        return visit.photoNotes().stream()
                .filter(row -> row.value().photo().equals(photo))
                .toList();
    }

    static List<Recorded<HiddenRegion>> hidden(VisitRecord visit, PhotoId photo) {
        return visit.hidden().stream()
                .filter(row -> row.value().photo().equals(photo))
                .toList();
    }

    /** A note as those hear it who cannot see it. */
    static DrawnPart part(Texts texts, PhotoNote note, boolean chosen, Runnable choose) {
        Rectangle box = new Rectangle();
        PixelPoint a = note.points().get(0);
        PixelPoint b = note.points().get(note.points().size() - 1);
        box.setFrameFromDiagonal(a.x(), a.y(), b.x(), b.y());
        return new DrawnPart(
                texts.get("photos.note.part", note.shape().said(), note.text().orElse(""))
                        .strip(),
                box,
                chosen,
                texts.get("photos.note.part.choose"),
                choose);
    }

    static PhotoNote note(
            PhotoId photo, NoteShape shape, Point2D a, Point2D b, Optional<String> text, Optional<PhotoScale> scale) {
        List<PixelPoint> points = shape.points() == 1
                ? List.of(PhotoShapes.pixel(a))
                : List.of(PhotoShapes.pixel(a), PhotoShapes.pixel(b));
        return new PhotoNote(photo, Optional.empty(), shape, points, text, scale);
    }

    static HiddenRegion region(PhotoId photo, Point2D a, Point2D b) {
        Rectangle2D box = box(a, b);
        return new HiddenRegion(
                photo,
                new Outline(
                        List.of(
                                new PixelPoint(box.getMinX(), box.getMinY()),
                                new PixelPoint(box.getMaxX(), box.getMinY()),
                                new PixelPoint(box.getMaxX(), box.getMaxY()),
                                new PixelPoint(box.getMinX(), box.getMaxY())),
                        List.of()),
                Optional.empty());
    }

    static Rectangle2D box(Point2D a, Point2D b) {
        Rectangle2D box = new Rectangle2D.Double();
        box.setFrameFromDiagonal(a, b);
        return box;
    }

    /** True if a note is drawn within a distance of a point, in pixels of the photo. */
    static boolean lies(PhotoNote note, Point2D p, double within) {
        PixelPoint a = note.points().get(0);
        if (note.shape() == NoteShape.TEXT) {
            return new Rectangle2D.Double(a.x() - within, a.y() - within, 12 * within, 4 * within).contains(p);
        }
        PixelPoint b = note.points().get(1);
        if (note.shape() == NoteShape.BOX) {
            Rectangle2D box = box(new Point2D.Double(a.x(), a.y()), new Point2D.Double(b.x(), b.y()));
            Rectangle2D outer = grown(box, within);
            Rectangle2D inner = grown(box, -within);
            return outer.contains(p) && !(inner.getWidth() > 0 && inner.getHeight() > 0 && inner.contains(p));
        }
        return Line2D.ptSegDist(a.x(), a.y(), b.x(), b.y(), p.getX(), p.getY()) <= within;
    }

    private static Rectangle2D grown(Rectangle2D box, double by) {
        return new Rectangle2D.Double(
                box.getX() - by, box.getY() - by, box.getWidth() + 2 * by, box.getHeight() + 2 * by);
    }

    static PhotoNote moved(PhotoNote note, double dx, double dy) {
        return new PhotoNote(
                note.photo(), note.atSeconds(), note.shape(), moved(note.points(), dx, dy), note.text(), note.scale());
    }

    static HiddenRegion moved(HiddenRegion region, double dx, double dy) {
        Outline old = region.outline();
        return new HiddenRegion(
                region.photo(),
                new Outline(
                        moved(old.shell(), dx, dy),
                        old.holes().stream().map(hole -> moved(hole, dx, dy)).toList()),
                region.why());
    }

    private static List<PixelPoint> moved(List<PixelPoint> points, double dx, double dy) {
        return points.stream().map(p -> new PixelPoint(p.x() + dx, p.y() + dy)).toList();
    }
}
