package quarterlight.compare;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import quarterlight.car.Zone;
import quarterlight.car.ZoneId;
import quarterlight.coverage.Coverage;
import quarterlight.coverage.CoverageRules;
import quarterlight.coverage.Gap;
import quarterlight.findings.Findings;
import quarterlight.finish.FinishEngine;
import quarterlight.finish.JointHistory;

/**
 * Two cars side by side. Unlike bodies are compared by the zones that both have. Immutable.
 *
 * @param zones zones that both cars have, in the order of the zone table
 * @param counted outer panels with a reading or a sign on both: those that the counts are over
 * @param refinished how many of them are not factory finish
 * @param repaired how many are refinished over filler
 * @param trials functions tried on either
 */
public record Comparison(
        CarSummary a,
        CarSummary b,
        List<ComparedZone> zones,
        List<ZoneId> counted,
        CountComparison refinished,
        CountComparison repaired,
        List<ComparedTrial> trials) {
    public Comparison {
        Objects.requireNonNull(a, "a");
        Objects.requireNonNull(b, "b");
        Objects.requireNonNull(refinished, "refinished");
        Objects.requireNonNull(repaired, "repaired");
        zones = List.copyOf(zones);
        counted = List.copyOf(counted);
        trials = List.copyOf(trials);
    }

    /** Compares two cars by all that was worked out of their visits. */
    public static Comparison of(Findings a, Findings b, CoverageRules rules) {
        List<Gap> gapsA = gaps(a, rules);
        List<Gap> gapsB = gaps(b, rules);
        List<Zone> zonesA = zones(a);
        List<Zone> zonesB = zones(b);
        List<ComparedZone> shared = new ArrayList<>();
        for (Zone zone : zonesA) {
            if (zonesB.contains(zone)) {
                ZoneFacts left = ZoneFacts.of(a, zone.id(), gapsA);
                ZoneFacts right = ZoneFacts.of(b, zone.id(), gapsB);
                shared.add(new ComparedZone(zone, left, right, ZoneContrasts.of(left, right)));
            }
        }
        JointHistory jointA = joint(a);
        JointHistory jointB = joint(b);
        Set<ZoneId> counted = new LinkedHashSet<>();
        counted.addAll(jointA.zones());
        counted.retainAll(jointB.zones());
        return new Comparison(
                CarSummary.of(a, gapsA, without(zonesA, zonesB)),
                CarSummary.of(b, gapsB, without(zonesB, zonesA)),
                shared,
                List.copyOf(counted),
                CountComparison.of(jointA.notFactory(counted), jointB.notFactory(counted)),
                CountComparison.of(jointA.filler(counted), jointB.filler(counted)),
                ComparedTrial.of(a.visit(), b.visit()));
    }

    /** What speaks for one of the cars: the zones and sentences that do, in the order of the zone table. */
    public List<ComparedZone> speakingFor(Side side) {
        return zones.stream()
                .filter(zone -> zone.contrasts().stream()
                        .anyMatch(contrast ->
                                contrast.speaksFor().filter(side::equals).isPresent()))
                .toList();
    }

    private static List<Gap> gaps(Findings car, CoverageRules rules) {
        return Coverage.gaps(car.visit(), car.catalog(), car.thickness(), car.rust(), rules);
    }

    private static List<Zone> zones(Findings car) {
        return car.catalog().zonesOf(car.visit().facts().car().body());
    }

    private static List<Zone> without(List<Zone> all, List<Zone> others) {
        Set<Zone> known = new HashSet<>(others);
        return all.stream().filter(zone -> !known.contains(zone)).toList();
    }

    private static JointHistory joint(Findings car) {
        return new FinishEngine(car.evidence().profile()).joint(car.evidence());
    }
}
