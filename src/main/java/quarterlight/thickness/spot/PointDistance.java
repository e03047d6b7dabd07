package quarterlight.thickness.spot;

import java.util.OptionalDouble;
import quarterlight.visit.pin.ViewPoint;

/** How far apart two points of the body are, mm; empty if that cannot be told, as of points in different views. */
@FunctionalInterface
public interface PointDistance {
    OptionalDouble mm(ViewPoint a, ViewPoint b);
}
