package quarterlight.visit;

import java.util.List;
import java.util.Objects;

/** Something of known size marked on an upright photo. */
public sealed interface PhotoScale {
    /** A known length between two pixels: a tape, a ruler. */
    record KnownLength(PixelPoint from, PixelPoint to, double mm) implements PhotoScale {
        public KnownLength {
            Objects.requireNonNull(from, "from");
            Objects.requireNonNull(to, "to");
            requireSize(mm);
        }
    }

    /** A known rectangle: four corners in order round, the first side {@code widthMm}, the second {@code heightMm}. */
    record KnownRectangle(List<PixelPoint> corners, double widthMm, double heightMm) implements PhotoScale {
        public KnownRectangle {
            corners = List.copyOf(corners);
            if (corners.size() != 4) {
                throw new IllegalArgumentException("a rectangle has 4 corners, not " + corners.size());
            }
            requireSize(widthMm);
            requireSize(heightMm);
        }
    }

    private static void requireSize(double mm) {
        if (!Double.isFinite(mm) || mm <= 0) {
            throw new IllegalArgumentException("a known size is above 0 mm, not " + mm);
        }
    }
}
