package quarterlight.diagram;

/** The main dimensions a diagram is drawn with, mm; a car's own stand in {@link quarterlight.car.body.Dimensions}. */
public record StyleSize(double wheelbaseMm, double lengthMm, double widthMm, double heightMm) {
    public StyleSize {
        requireLength(wheelbaseMm, "wheelbase");
        requireLength(lengthMm, "length");
        requireLength(widthMm, "width");
        requireLength(heightMm, "height");
    }

    private static void requireLength(double mm, String what) {
        if (!(mm > 0) || mm > 100_000) {
            throw new IllegalArgumentException("the " + what + " of a car is not " + mm + " mm");
        }
    }
}
