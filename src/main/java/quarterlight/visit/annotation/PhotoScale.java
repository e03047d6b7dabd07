package quarterlight.visit.annotation;

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

        @Override
        public List<PixelPoint> marks() {
            return List.of(from, to);
        }

        @Override
        public PhotoScale at(List<PixelPoint> marks) {
            return new KnownLength(marks.get(0), marks.get(1), mm);
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

        @Override
        public List<PixelPoint> marks() {
            return corners;
        }

        @Override
        public PhotoScale at(List<PixelPoint> marks) {
            return new KnownRectangle(marks, widthMm, heightMm);
        }
    }

    /** A coin of known diameter: points on its rim, all round. */
    record Coin(List<PixelPoint> rim, double diameterMm) implements PhotoScale {
        /** Fewer points do not settle an ellipse. */
        public static final int MIN_POINTS = 5;

        public Coin {
            rim = List.copyOf(rim);
            if (rim.size() < MIN_POINTS) {
                throw new IllegalArgumentException(
                        "the rim of a coin has " + MIN_POINTS + " points or more, not " + rim.size());
            }
            requireSize(diameterMm);
        }

        @Override
        public List<PixelPoint> marks() {
            return rim;
        }

        @Override
        public PhotoScale at(List<PixelPoint> marks) {
            return new Coin(marks, diameterMm);
        }
    }

    /** The marks on the photo, in their order. */
    List<PixelPoint> marks();

    /** The same thing of known size, marked at other points: as many as {@link #marks} gives. */
    PhotoScale at(List<PixelPoint> marks);

    private static void requireSize(double mm) {
        if (!Double.isFinite(mm) || mm <= 0) {
            throw new IllegalArgumentException("a known size is above 0 mm, not " + mm);
        }
    }
}
