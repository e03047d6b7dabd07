package quarterlight.visit.annotation;

import java.util.Objects;
import java.util.Optional;
import quarterlight.car.ZoneId;
import quarterlight.visit.photo.PhotoId;

/**
 * An outline drawn on a photo, with the scale set on the same photo.
 *
 * @param zone the zone it lies on; always present once recorded (taken from the photo's only pin if not given)
 * @param patch traces of different photos with the same patch show the same place
 */
public record Trace(
        PhotoId photo,
        TraceKind kind,
        Outline outline,
        PhotoScale scale,
        ZoneId zone,
        Optional<String> patch,
        Optional<String> note) {
    public Trace {
        Objects.requireNonNull(photo, "photo");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(outline, "outline");
        Objects.requireNonNull(scale, "scale");
        Objects.requireNonNull(zone, "zone");
    }
}
