package quarterlight.visit;

import java.util.Objects;
import java.util.Optional;
import quarterlight.car.ZoneId;

/**
 * A stamp, tag, label or casting code as read.
 *
 * @param part what bears it
 * @param text as read; letters that could not be read are {@code ?}
 * @param pattern the date pattern it is to be read by, if the inspector says so
 * @param expected what it should say, if something does
 */
public record Mark(
        String part,
        MarkKind kind,
        String text,
        Optional<MarkStage> stage,
        Optional<String> pattern,
        Optional<String> expected,
        Optional<ZoneId> zone,
        Optional<ViewPoint> point,
        Optional<PhotoId> photo,
        Optional<String> note) {
    public Mark {
        Objects.requireNonNull(kind, "kind");
        if (part.isBlank() || text.isBlank()) {
            throw new IllegalArgumentException("a mark has a part and a text");
        }
    }
}
