package quarterlight.visit;

import java.util.Objects;
import java.util.Optional;
import quarterlight.visit.photo.PhotoId;

/**
 * A draft of spoken words that the inspector dropped, or kept otherwise than it was read; it is not offered again.
 *
 * @param words the file of words
 * @param what what the draft would have become
 * @param said zones and values of the draft, in one line
 * @param text the words from which it followed
 * @param instead zones and values of what was kept in its place; empty for a draft that was dropped
 */
public record DroppedDraft(
        PhotoId words, double atSeconds, String what, String said, String text, Optional<String> instead) {
    public DroppedDraft {
        Objects.requireNonNull(words, "words");
        Objects.requireNonNull(said, "said");
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(instead, "instead");
        if (!(atSeconds >= 0) || what.isBlank()) {
            throw new IllegalArgumentException("a dropped draft has its second and says what it would have been");
        }
    }
}
