package quarterlight.visit;

import java.util.Objects;
import java.util.Optional;

/**
 * What the first page for the buyer says in the inspector's own words.
 *
 * @param credentials of the inspector
 * @param contact how the inspector is reached
 * @param paragraph in place of the one that is composed of the findings
 */
public record BriefWords(Optional<String> credentials, Optional<String> contact, Optional<String> paragraph) {
    public static final BriefWords NONE = new BriefWords(Optional.empty(), Optional.empty(), Optional.empty());

    public BriefWords {
        Objects.requireNonNull(credentials, "credentials");
        Objects.requireNonNull(contact, "contact");
        Objects.requireNonNull(paragraph, "paragraph");
    }
}
