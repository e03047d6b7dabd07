package quarterlight.rust.plane;

import java.util.List;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.PhotoScale.Coin;
import quarterlight.visit.annotation.PhotoScale.KnownLength;
import quarterlight.visit.annotation.PixelPoint;

/**
 * What a tilt of the panel that the scale cannot see leaves open, as a share of an area or a length (one standard
 * deviation; two of them are meant to hold the truth in 90 to 99 of 100).
 * <p>Three parts, first order in the angles:
 * <ul>
 *   <li>A known length does not show the tilt t. Along the slope it is shortened by cos t, across it is not, so the area
 *       it gives is off by a factor from cos t to 1 / cos t. Prior: a panel tilted by 0 to 45 degrees, whichever way
 *       (judgement). {@link #LENGTH_TILT} is set so that two standard deviations still cover 90 of 100 at 45 degrees.
 *   <li>Away from the scale the panel comes nearer or goes away: the area of a pixel goes with the third power of the
 *       distance, a length with up to the second. Over an angle d that is 3 d tan t. A length does not show tan t: its
 *       usual size and any direction give {@link #LENGTH_SLOPE}.
 *   <li>A coin shows tan t and the line of the slope, but not which end is nearer, and off the photo's middle the line of
 *       sight leans by itself: 3 |d . tan t| and 3 |d . r|, r the angle of the coin from the middle.
 * </ul>
 * A rectangle shows all of it. Source of the map: the pinhole camera (R. Hartley, A. Zisserman, Multiple View Geometry in
 * Computer Vision, 2nd edition, 2004, chapter 6, from memory); the parts are derived from it.
 */
final class UnseenTilt {
    /** Share of an area by a known length, for the tilt at the length itself. */
    static final double LENGTH_TILT = 0.25;

    /** 3 tan t |cos a| for the usual tilt (root mean square of tan t over 0 to 45 degrees, 0.5) and any direction a. */
    static final double LENGTH_SLOPE = 1.06;

    private static final double AREA_POWER = 3;
    private static final double LENGTH_POWER = 2;

    private UnseenTilt() {}

    /** Share of an area whose middle lies there. */
    static double ofArea(PixelPoint middle, PhotoScale scale, Lens lens) {
        return share(middle, scale, lens, LENGTH_TILT, AREA_POWER);
    }

    /**
     * Share of a length. One that runs along the ruler is shortened as the ruler is.
     *
     * @param from one end
     * @param to the other end
     */
    static double ofLength(PixelPoint from, PixelPoint to, PhotoScale scale, Lens lens) {
        double turned = scale instanceof KnownLength ruler ? sine(from, to, ruler.from(), ruler.to()) : 0;
        return share(middle(List.of(from, to)), scale, lens, LENGTH_TILT * turned, LENGTH_POWER);
    }

    private static double share(PixelPoint middle, PhotoScale scale, Lens lens, double atScale, double power) {
        if (scale instanceof KnownLength) {
            double away = distance(middle, middle(scale.marks())) / lens.focalPx();
            return Math.hypot(atScale, power / AREA_POWER * LENGTH_SLOPE * away);
        }
        return scale instanceof Coin coin
                ? CoinScale.ofRim(coin.rim(), coin.diameterMm())
                        .map(ellipse -> power * slope(middle, ellipse, lens))
                        .orElse(0.0)
                : 0;
    }

    /** |d . tan t| + |d . r| for a place away from a coin. */
    private static double slope(PixelPoint place, CoinScale coin, Lens lens) {
        double dx = (place.x() - coin.middle().x()) / lens.focalPx();
        double dy = (place.y() - coin.middle().y()) / lens.focalPx();
        double tangent = Math.sqrt(Math.max(0, Math.pow(coin.majorPx() / coin.minorPx(), 2) - 1));
        double along = -dx * Math.sin(coin.majorRadians()) + dy * Math.cos(coin.majorRadians());
        double rx = (coin.middle().x() - lens.middle().x()) / lens.focalPx();
        double ry = (coin.middle().y() - lens.middle().y()) / lens.focalPx();
        return tangent * Math.abs(along) + Math.abs(dx * rx + dy * ry);
    }

    /** The mean of some points. */
    static PixelPoint middle(List<PixelPoint> points) {
        return new PixelPoint(
                points.stream().mapToDouble(PixelPoint::x).average().orElse(0),
                points.stream().mapToDouble(PixelPoint::y).average().orElse(0));
    }

    private static double distance(PixelPoint a, PixelPoint b) {
        return Math.hypot(a.x() - b.x(), a.y() - b.y());
    }

    /** Sine of the angle between two lines, 0 to 1. */
    private static double sine(PixelPoint a, PixelPoint b, PixelPoint c, PixelPoint d) {
        double cross = (b.x() - a.x()) * (d.y() - c.y()) - (b.y() - a.y()) * (d.x() - c.x());
        double lengths = distance(a, b) * distance(c, d);
        return lengths > 0 ? Math.min(1, Math.abs(cross) / lengths) : 1;
    }
}
