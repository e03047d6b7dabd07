package quarterlight.page.report.picture;

import java.awt.image.BufferedImage;
import java.util.Optional;
import java.util.OptionalDouble;
import quarterlight.visit.photo.PhotoId;

/** Where the report gets its pictures from. Asked from several threads at once. */
@FunctionalInterface
public interface PhotoPixels {
    /**
     * A photo or a moment of a film, upright, in sRGB.
     *
     * @param at seconds into a film; empty for a photo, and for a film's usual picture
     * @param longSidePx the picture's long side at most, pixels
     * @return empty if it cannot be shown
     */
    Optional<BufferedImage> picture(PhotoId photo, OptionalDouble at, int longSidePx);
}
