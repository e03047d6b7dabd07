package quarterlight.visit;

import java.util.Objects;
import java.util.Optional;
import quarterlight.car.ZoneId;
import quarterlight.visit.photo.PhotoId;

/** A zone or a photo that the inspector leaves out of the report: exactly one of the two. */
public record LeftOut(Optional<ZoneId> zone, Optional<PhotoId> photo) {
    public LeftOut {
        Objects.requireNonNull(zone, "zone");
        Objects.requireNonNull(photo, "photo");
        if (zone.isPresent() == photo.isPresent()) {
            throw new IllegalArgumentException("what is left out is a zone or a photo, one of the two");
        }
    }

    public static LeftOut of(ZoneId zone) {
        return new LeftOut(Optional.of(zone), Optional.empty());
    }

    public static LeftOut of(PhotoId photo) {
        return new LeftOut(Optional.empty(), Optional.of(photo));
    }
}
