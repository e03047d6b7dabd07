package quarterlight.visit;

import java.util.Objects;
import java.util.Optional;
import quarterlight.car.ZoneId;

/**
 * A sentence about a zone, with its kind, weight, basis and photo.
 *
 * @param atSeconds the moment, if the photo is a film
 */
public record Statement(
        ZoneId zone,
        StatementKind kind,
        String text,
        Optional<Severity> severity,
        Optional<Basis> basis,
        Optional<PhotoId> photo,
        Optional<Double> atSeconds) {
    public Statement {
        Objects.requireNonNull(zone, "zone");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(text, "text");
        Moments.require(atSeconds);
    }
}
