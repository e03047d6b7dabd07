package quarterlight.visit;

import java.util.Objects;
import java.util.Optional;
import quarterlight.car.ZoneId;
import quarterlight.visit.photo.PhotoId;

/** A zone or a photo that the inspector leaves out of the report: exactly one of the two. */
public record ReportExclusion(Optional<ZoneId> zone, Optional<PhotoId> photo) {
    public ReportExclusion {
        Objects.requireNonNull(zone, "zone");
        Objects.requireNonNull(photo, "photo");
        if (zone.isPresent() == photo.isPresent()) {
            throw new IllegalArgumentException("what is left out is a zone or a photo, one of the two");
        }
    }

    public static ReportExclusion of(ZoneId zone) {
        return new ReportExclusion(Optional.of(zone), Optional.empty());
    }

    public static ReportExclusion of(PhotoId photo) {
        return new ReportExclusion(Optional.empty(), Optional.of(photo));
    }
}
