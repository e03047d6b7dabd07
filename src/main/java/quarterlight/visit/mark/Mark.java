package quarterlight.visit.mark;

import java.util.Objects;
import java.util.Optional;
import quarterlight.car.ZoneId;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.ViewPoint;
import quarterlight.visit.statement.Origin;

/**
 * A stamp, tag, label or casting code as read.
 *
 * @param part what bears it
 * @param text as read; letters that could not be read are {@code ?}
 * @param pattern the date pattern it is to be read by, if the inspector says so
 * @param expected what it should say, if something does
 * @param leadDays how many days before the car such a part is usually dated, if the inspector says so
 * @param origin of the part that bears it
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
        Optional<String> note,
        Optional<Integer> leadDays,
        Optional<Origin> origin) {
    public Mark {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(origin, "origin");
        leadDays.filter(days -> days < 0).ifPresent(days -> {
            throw new IllegalArgumentException("a lead is 0 days or more, not " + days);
        });
        if (part.isBlank() || text.isBlank()) {
            throw new IllegalArgumentException("a mark has a part and a text");
        }
    }
}
