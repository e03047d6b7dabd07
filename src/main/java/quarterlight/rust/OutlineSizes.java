package quarterlight.rust;

import java.util.Optional;

/**
 * How large an outline may truly be, for drawing its error: factors of its width and height at which its area is two standard
 * deviations smaller and larger.
 *
 * @param least factor for the least size, 0 to 1
 * @param greatest factor for the greatest size, 1 or more
 */
public record OutlineSizes(double least, double greatest) {
    private static final double DEVIATIONS = 2;

    /** The sizes of a measured outline; empty if it is not measured. */
    public static Optional<OutlineSizes> of(TraceArea area) {
        if (area.area().isEmpty() || area.sdMm2().isEmpty() || area.area().get().mm2() <= 0) {
            return Optional.empty();
        }
        double share =
                DEVIATIONS * area.sdMm2().getAsDouble() / area.area().get().mm2();
        return Optional.of(new OutlineSizes(Math.sqrt(Math.max(0, 1 - share)), Math.sqrt(1 + share)));
    }
}
