package quarterlight.coverage;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import quarterlight.car.Zone;
import quarterlight.car.ZoneId;
import quarterlight.language.Sentences;

/**
 * Evidence that a zone lacks.
 *
 * @param want how much is wanted
 * @param have how much there is, below {@code want}
 * @param part the mark it is about, if it is about one
 * @param excuse why it was not looked at, if the inspector said so; it is missing all the same
 * @param why why it is wanted
 */
public record Gap(
        Zone zone, EvidenceKind lacks, int want, int have, Optional<String> part, Optional<String> excuse, String why) {
    public Gap {
        Objects.requireNonNull(zone, "zone");
        Objects.requireNonNull(lacks, "lacks");
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(excuse, "excuse");
        Objects.requireNonNull(why, "why");
        if (have < 0 || have >= want) {
            throw new IllegalArgumentException("nothing is missing where " + have + " of " + want + " are there");
        }
    }

    /** As the list says it, in the language in hand. */
    @Override
    public String why() {
        String slug = why.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
        return Sentences.sayOr("why." + slug.replaceAll("-$", ""), why);
    }

    /** What tells one gap from another, however much of it is there by now. */
    public record Matter(ZoneId zone, EvidenceKind lacks, Optional<String> part) {}

    public Matter matter() {
        return new Matter(zone.id(), lacks, part);
    }
}
