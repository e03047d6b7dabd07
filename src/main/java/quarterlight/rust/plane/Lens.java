package quarterlight.rust.plane;

import java.util.Collection;
import java.util.OptionalDouble;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.photo.PhotoFile;

/**
 * The camera of a photo: the focal length that its Exif told, else what is taken for granted. Immutable.
 * <p>Judgement: cameras that one inspects with show a field as a lens of 24 to 40 mm on small film does, so their focal
 * length is about 0.8 of the photo's longer side, with a factor of {@link #FOCAL_SPREAD} (one standard deviation) either
 * way; the middle of the photo lies on the axis, so the photo is not cut.
 *
 * @param focalPx the focal length, pixels of the upright photo
 * @param middle where the axis meets the photo
 */
public record Lens(double focalPx, PixelPoint middle) {
    /** Focal length as a share of the photo's longer side. */
    static final double USUAL_FOCAL = 0.8;

    /** Standard deviation of the logarithm of the focal length. */
    static final double FOCAL_SPREAD = 0.25;

    /** Of the film that a told focal length refers to, 36 x 24 mm. */
    private static final double FILM_DIAGONAL_MM = Math.hypot(36, 24);

    /** What most photos have or more, pixels. Judgement. */
    private static final int USUAL_WIDTH = 3000;

    private static final int USUAL_HEIGHT = 2250;

    public Lens {
        if (!(focalPx > 0)) {
            throw new IllegalArgumentException("a focal length is above 0 pixels, not " + focalPx);
        }
    }

    /** The usual lens for a photo of this size. */
    public static Lens usual(int width, int height) {
        return new Lens(USUAL_FOCAL * Math.max(width, height), new PixelPoint(width / 2.0, height / 2.0));
    }

    /** The lens that the photo tells, else the usual one. */
    public static Lens of(PhotoFile photo, Collection<PixelPoint> marks) {
        if (photo.width().isEmpty() || photo.height().isEmpty()) {
            return ofMarks(marks);
        }
        int width = photo.width().getAsInt();
        int height = photo.height().getAsInt();
        Lens usual = usual(width, height);
        OptionalDouble told = photo.more().focal35Mm();
        return told.isPresent()
                ? new Lens(told.getAsDouble() / FILM_DIAGONAL_MM * Math.hypot(width, height), usual.middle())
                : usual;
    }

    /** The usual lens for a photo of unknown size: it reaches to the outermost mark and has no fewer than the usual pixels. */
    static Lens ofMarks(Collection<PixelPoint> marks) {
        double x = marks.stream().mapToDouble(PixelPoint::x).max().orElse(0);
        double y = marks.stream().mapToDouble(PixelPoint::y).max().orElse(0);
        return usual(Math.max(USUAL_WIDTH, (int) Math.ceil(x)), Math.max(USUAL_HEIGHT, (int) Math.ceil(y)));
    }
}
