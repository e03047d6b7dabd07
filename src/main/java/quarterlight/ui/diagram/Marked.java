package quarterlight.ui.diagram;

import java.awt.Rectangle;
import java.awt.geom.Point2D;
import java.util.HashSet;
import java.util.Set;
import quarterlight.diagram.ink.Highlight;
import quarterlight.ui.kit.visit.Selection;
import quarterlight.visit.photo.PhotoId;

/** What stands out on the drawing, by what is selected and hovered. */
final class Marked {
    private Marked() {}

    static Highlight zones(Selection selection) {
        return new Highlight(selection.zones(), selection.hoveredZone());
    }

    /** Photos that are hovered or in hand. */
    static Set<PhotoId> photos(Selection selection) {
        Set<PhotoId> photos = new HashSet<>(selection.photos());
        selection.hoveredPhoto().ifPresent(photos::add);
        return photos;
    }

    /** What is painted anew about a point. */
    static Rectangle around(Point2D center, int radius) {
        return new Rectangle((int) center.getX() - radius, (int) center.getY() - radius, 2 * radius, 2 * radius);
    }
}
