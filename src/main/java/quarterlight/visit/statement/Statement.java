package quarterlight.visit.statement;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import quarterlight.car.ZoneId;
import quarterlight.visit.photo.Moments;
import quarterlight.visit.photo.PhotoId;

/**
 * A sentence about a zone, with what it says in words of closed lists, weight, basis and photos.
 *
 * @param what origin, condition or both
 * @param photo the photo that shows it first
 * @param atSeconds the moment, if the first photo is a film
 * @param more further photos that show it, in their order; none without a first one
 */
public record Statement(
        ZoneId zone,
        Facets what,
        String text,
        Optional<Severity> severity,
        Optional<Basis> basis,
        Optional<PhotoId> photo,
        Optional<Double> atSeconds,
        List<PhotoId> more,
        StatementDetails details) {
    public Statement {
        Objects.requireNonNull(zone, "zone");
        Objects.requireNonNull(what, "what");
        Objects.requireNonNull(details, "details");
        Objects.requireNonNull(text, "text");
        Moments.require(atSeconds);
        more = List.copyOf(more);
        if (!more.isEmpty() && photo.isEmpty()) {
            throw new IllegalArgumentException("a statement that names further photos names a first one");
        }
        if (photos(photo, more).stream().distinct().count()
                != more.size() + photo.stream().count()) {
            throw new IllegalArgumentException("a statement names each photo once");
        }
    }

    /** A sentence that one photo shows at most. */
    public Statement(
            ZoneId zone,
            Facets what,
            String text,
            Optional<Severity> severity,
            Optional<Basis> basis,
            Optional<PhotoId> photo,
            Optional<Double> atSeconds) {
        this(zone, what, text, severity, basis, photo, atSeconds, List.of(), StatementDetails.NONE);
    }

    public boolean is(Origin origin) {
        return what.is(origin);
    }

    public boolean is(Condition condition) {
        return what.is(condition);
    }

    /** The same sentence, shown by other photos. */
    public Statement withPhotos(List<PhotoId> shownBy, Optional<Double> moment) {
        return new Statement(
                zone,
                what,
                text,
                severity,
                basis,
                shownBy.stream().findFirst(),
                moment,
                shownBy.stream().skip(1).toList(),
                details);
    }

    /** Every photo that shows it, the first one first. */
    public List<PhotoId> photos() {
        return photos(photo, more);
    }

    private static List<PhotoId> photos(Optional<PhotoId> photo, List<PhotoId> more) {
        return Stream.concat(photo.stream(), more.stream()).toList();
    }
}
