package quarterlight.visit.trial;

import java.util.Objects;
import java.util.Optional;
import quarterlight.car.ZoneId;
import quarterlight.visit.photo.PhotoId;

/**
 * Something looked for in a zone, and whether it was seen.
 *
 * @param seen false if it was looked for and not there
 * @param speaksFor the panel it speaks for, if not the zone itself
 */
public record Sign(
        ZoneId zone,
        SignKind kind,
        boolean seen,
        Optional<ZoneId> speaksFor,
        Optional<PhotoId> photo,
        Optional<String> note) {
    public Sign {
        Objects.requireNonNull(zone, "zone");
        Objects.requireNonNull(kind, "kind");
    }
}
