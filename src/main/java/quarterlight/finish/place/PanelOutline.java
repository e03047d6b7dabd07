package quarterlight.finish.place;

import java.util.Objects;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import quarterlight.car.View;
import quarterlight.visit.pin.ViewPoint;

/**
 * A panel as the view of the body diagram that shows it best has it, on the scale of the car in hand. Immutable; the shape is
 * not to be changed.
 *
 * @param widthMm width of the whole view, above 0
 * @param heightMm height of the whole view, above 0
 * @param shape outline of the panel in mm from the view's top left; polygons that do not cross themselves, not empty
 */
public record PanelOutline(View view, double widthMm, double heightMm, Geometry shape) {
    public PanelOutline {
        Objects.requireNonNull(view, "view");
        if (!(widthMm > 0 && heightMm > 0) || shape.isEmpty()) {
            throw new IllegalArgumentException("a panel's outline has a size, and so has its view " + view.word());
        }
    }

    /** Where a place lies in mm; empty for one in another view. */
    public Optional<Coordinate> mm(ViewPoint place) {
        return place.view() == view
                ? Optional.of(new Coordinate(place.x() * widthMm, place.y() * heightMm))
                : Optional.empty();
    }

    /** The place at a point in mm. */
    public ViewPoint place(Coordinate mm) {
        return new ViewPoint(view, share(mm.x / widthMm), share(mm.y / heightMm));
    }

    private static double share(double value) {
        return Math.max(0, Math.min(1, value));
    }
}
