package quarterlight.findings;

import java.util.List;
import java.util.Objects;
import quarterlight.car.ZoneId;

/**
 * One thing that matters about a car, with all that speaks for it.
 *
 * @param place the zones' names, or the part where no zone is known
 * @param zones the zones it is about, in the order of the zone table; may be empty
 * @param headline what it is, in one sentence
 * @param evidence sentences, heaviest first; at least one
 * @param weight by {@link MatterWeights}; orders matters, and means nothing beyond that
 * @param structural true if metal that carries load is concerned, so that the caution for it is due
 */
public record Matter(
        String place, List<ZoneId> zones, String headline, List<String> evidence, int weight, boolean structural) {
    public Matter {
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(headline, "headline");
        zones = List.copyOf(zones);
        evidence = List.copyOf(evidence);
        if (evidence.isEmpty()) {
            throw new IllegalArgumentException("a matter rests on evidence: " + place);
        }
    }
}
