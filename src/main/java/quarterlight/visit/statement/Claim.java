package quarterlight.visit.statement;

import java.util.Objects;
import java.util.Optional;
import quarterlight.car.PartialDate;
import quarterlight.car.ZoneId;
import quarterlight.visit.photo.PhotoId;

/**
 * What a seller, owner or paper says of a zone or the car, to be laid against what the visit found.
 *
 * @param text the words of the claim
 * @param zone empty for the car as a whole
 * @param part a part within the zone
 * @param date when it was claimed
 * @param about what it is about: paint, mileage, engine
 * @param judged what the inspector decided; empty if not decided
 * @param confidential whether it never leaves in anything made for the buyer
 */
public record Claim(
        String text,
        Claimant by,
        Optional<ZoneId> zone,
        Optional<String> part,
        Optional<PartialDate> date,
        Optional<String> about,
        Optional<PhotoId> photo,
        Optional<Judgment> judged,
        boolean confidential) {
    public Claim {
        Objects.requireNonNull(by, "by");
        Objects.requireNonNull(zone, "zone");
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(date, "date");
        Objects.requireNonNull(about, "about");
        Objects.requireNonNull(photo, "photo");
        Objects.requireNonNull(judged, "judged");
        if (text.isBlank()) {
            throw new IllegalArgumentException("a claim says something");
        }
    }
}
