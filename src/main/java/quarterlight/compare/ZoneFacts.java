package quarterlight.compare;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import quarterlight.car.ZoneId;
import quarterlight.coverage.Gap;
import quarterlight.findings.Findings;
import quarterlight.finish.ZoneEvidence;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.marks.Contradiction;
import quarterlight.rust.ZoneRust;
import quarterlight.thickness.ZoneThickness;
import quarterlight.thickness.gauge.GaugeQuality;
import quarterlight.visit.statement.Statement;

/**
 * What is known of one zone of one car.
 *
 * @param thickness if it has a reading
 * @param levelUm the car's own level of its first finish, um; empty if the car was not measured
 * @param gaugeFailed true if a gauge check of the visit failed: its readings are not laid beside others
 * @param history if it is an outer panel
 * @param finishEvidence true if the panel has evidence of its own: a spot, a sign or a look for rust
 * @param gaps evidence it lacks
 * @param datesJudged dates and features of the zone that could be judged
 * @param dateContradictions what of its dates, numbers and features does not go together with the car
 */
public record ZoneFacts(
        Optional<ZoneThickness> thickness,
        OptionalDouble levelUm,
        boolean gaugeFailed,
        Optional<ZoneHistory> history,
        boolean finishEvidence,
        Optional<ZoneRust> rust,
        List<Statement> statements,
        List<Gap> gaps,
        int datesJudged,
        List<Contradiction> dateContradictions) {
    public ZoneFacts {
        Objects.requireNonNull(thickness, "thickness");
        Objects.requireNonNull(levelUm, "levelUm");
        Objects.requireNonNull(history, "history");
        Objects.requireNonNull(rust, "rust");
        statements = List.copyOf(statements);
        gaps = List.copyOf(gaps);
        dateContradictions = List.copyOf(dateContradictions);
    }

    static ZoneFacts of(Findings car, ZoneId zone, List<Gap> gaps) {
        return new ZoneFacts(
                car.thickness().zone(zone),
                level(car),
                GaugeQuality.of(car.visit()).summary() == GaugeQuality.Summary.FAILED,
                car.history().zone(zone),
                car.evidence().zone(zone).map(ZoneFacts::some).orElse(false),
                car.rust().zone(zone),
                car.visit().standing().stream()
                        .filter(statement -> statement.zone().equals(zone))
                        .toList(),
                gaps.stream().filter(gap -> gap.zone().id().equals(zone)).toList(),
                car.marks().judged(place -> place.filter(zone::equals).isPresent()),
                car.marks().contradictions().stream()
                        .filter(contradiction ->
                                contradiction.zone().filter(zone::equals).isPresent())
                        .toList());
    }

    private static OptionalDouble level(Findings car) {
        boolean measured = car.evidence().zones().stream()
                .anyMatch(zone -> zone.readable() && !zone.spotsUm().isEmpty());
        return measured ? OptionalDouble.of(car.history().carLevel().um()) : OptionalDouble.empty();
    }

    private static boolean some(ZoneEvidence evidence) {
        boolean spots = !evidence.spotsUm().isEmpty() || evidence.overRange() > 0 || evidence.noMetal() > 0;
        boolean measured = evidence.readable() && spots;
        return measured || !evidence.signs().isEmpty() || evidence.rust().isPresent();
    }
}
