package quarterlight.visit.photo;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What a sidecar says of its photo.
 *
 * @param keywords in their order
 * @param rating stars 0 to 5, -1 for a rejected photo
 * @param orientation Exif orientation 1 to 8 that it gives the photo; told, and never applied
 */
public record SidecarWords(
        Optional<String> caption, List<String> keywords, OptionalInt rating, OptionalInt orientation) {
    public static final int MIN_RATING = -1;
    public static final int MAX_RATING = 5;

    public SidecarWords {
        Objects.requireNonNull(caption, "caption");
        keywords = List.copyOf(keywords);
        rating.ifPresent(stars -> require(stars >= MIN_RATING && stars <= MAX_RATING, "a rating is -1 to 5"));
        orientation.ifPresent(way -> require(way >= 1 && way <= 8, "an orientation is 1 to 8"));
    }

    private static void require(boolean holds, String rule) {
        if (!holds) {
            throw new IllegalArgumentException(rule);
        }
    }

    /** Whether it says nothing. */
    public boolean isEmpty() {
        return caption.isEmpty() && keywords.isEmpty() && rating.isEmpty() && orientation.isEmpty();
    }
}
