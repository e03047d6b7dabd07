package quarterlight.compare;

import java.util.Objects;
import java.util.Optional;

/**
 * What is worth saying of one aspect of a zone of both cars: a difference beyond the uncertainty, or evidence that one
 * side lacks.
 *
 * @param speaksFor the car that the difference speaks for; empty for a difference that is neither good nor bad, and for
 *     missing evidence
 * @param missing the car that lacks the evidence, if one does
 * @param text one sentence with the figures
 */
public record Contrast(Aspect aspect, Optional<Side> speaksFor, Optional<Side> missing, String text) {
    public Contrast {
        Objects.requireNonNull(aspect, "aspect");
        Objects.requireNonNull(text, "text");
        if (speaksFor.isPresent() && missing.isPresent()) {
            throw new IllegalArgumentException("missing evidence favors neither car");
        }
    }

    static Contrast difference(Aspect aspect, Optional<Side> speaksFor, String text) {
        return new Contrast(aspect, speaksFor, Optional.empty(), text);
    }

    static Contrast missing(Aspect aspect, Side side, String text) {
        return new Contrast(aspect, Optional.empty(), Optional.of(side), text);
    }
}
