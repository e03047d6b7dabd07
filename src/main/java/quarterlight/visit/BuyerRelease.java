package quarterlight.visit;

import java.util.Objects;
import quarterlight.visit.photo.PhotoId;

/** Says that a paper, sound, words or sidecar may go to the buyer; without it nothing made for the buyer holds a word of it. */
public record BuyerRelease(PhotoId photo) {
    public BuyerRelease {
        Objects.requireNonNull(photo, "photo");
    }
}
