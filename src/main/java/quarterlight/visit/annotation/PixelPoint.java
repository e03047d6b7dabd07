package quarterlight.visit.annotation;

/** A point of an upright photo in pixels, origin top left, x to the right, y down. */
public record PixelPoint(double x, double y) {
    public PixelPoint {
        if (!Double.isFinite(x) || !Double.isFinite(y)) {
            throw new IllegalArgumentException("a pixel has finite coordinates");
        }
    }
}
