package quarterlight.visit.annotation;

import java.util.Objects;
import java.util.Optional;
import quarterlight.visit.photo.PhotoId;

/**
 * A region of a photo, or of every frame of a film, that nothing made for the buyer may show; the original keeps it.
 *
 * @param why the reason, for the inspector alone
 */
public record HiddenRegion(PhotoId photo, Outline outline, Optional<String> why) {
    public HiddenRegion {
        Objects.requireNonNull(photo, "photo");
        Objects.requireNonNull(outline, "outline");
        Objects.requireNonNull(why, "why");
    }
}
