package quarterlight.visit.pin;

import java.util.Objects;
import quarterlight.car.View;

/**
 * A point in a view of the body diagram.
 *
 * @param x 0 to 1 of the view's width, from its left
 * @param y 0 to 1 of the view's height, from its top
 */
public record ViewPoint(View view, double x, double y) {
    public ViewPoint {
        Objects.requireNonNull(view, "view");
        if (!(x >= 0 && x <= 1 && y >= 0 && y <= 1)) {
            throw new IllegalArgumentException("a point of a view lies between 0 and 1, not at " + x + ", " + y);
        }
    }
}
