package quarterlight.compare;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import quarterlight.car.Zone;
import quarterlight.coverage.Gap;
import quarterlight.findings.Findings;
import quarterlight.marks.Contradiction;
import quarterlight.rust.ZoneRust;
import quarterlight.rust.need.RepairNeed;

/**
 * One car of a comparison as a whole; counts are over all zones of that car, not over the shared ones.
 *
 * @param name what the inspector calls it
 * @param measured outer panels with a spot
 * @param panels outer panels
 * @param rustLookedAt zones looked at for rust
 * @param holes holes found
 * @param needs zones by repair need; a need that no zone has is absent
 * @param gaps evidence that the visit lacks
 * @param datesJudged marks whose dates or numbers could be judged, and features
 * @param dateContradictions what of its dates, numbers and features does not go together with the car as claimed
 * @param onlyHere zones that the other car does not have
 */
public record CarSummary(
        String name,
        int measured,
        int panels,
        int rustLookedAt,
        int holes,
        Map<RepairNeed, Integer> needs,
        List<Gap> gaps,
        int datesJudged,
        List<Contradiction> dateContradictions,
        List<Zone> onlyHere) {
    public CarSummary {
        Objects.requireNonNull(name, "name");
        needs = Map.copyOf(needs);
        gaps = List.copyOf(gaps);
        dateContradictions = List.copyOf(dateContradictions);
        onlyHere = List.copyOf(onlyHere);
    }

    static CarSummary of(Findings car, List<Gap> gaps, List<Zone> onlyHere) {
        Map<RepairNeed, Integer> needs = new EnumMap<>(RepairNeed.class);
        int lookedAt = 0;
        int holes = 0;
        for (ZoneRust zone : car.rust().zones()) {
            lookedAt += zone.lookedAt() ? 1 : 0;
            holes += zone.holes().orElse(0);
            zone.need().ifPresent(need -> needs.merge(need, 1, Integer::sum));
        }
        int measured = (int) car.evidence().zones().stream()
                .filter(panel -> car.thickness()
                        .zone(panel.zone())
                        .filter(zone -> !zone.spots().isEmpty())
                        .isPresent())
                .count();
        return new CarSummary(
                car.visit().facts().car().name(),
                measured,
                car.evidence().zones().size(),
                lookedAt,
                holes,
                needs,
                gaps,
                car.marks().judged(place -> true),
                car.marks().contradictions(),
                onlyHere);
    }
}
