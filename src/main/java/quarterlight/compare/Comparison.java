package quarterlight.compare;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import quarterlight.car.Zone;
import quarterlight.car.ZoneId;
import quarterlight.compare.place.Counterpart;
import quarterlight.compare.place.Place;
import quarterlight.compare.place.Places;
import quarterlight.coverage.Coverage;
import quarterlight.coverage.CoverageRules;
import quarterlight.coverage.Gap;
import quarterlight.findings.Findings;
import quarterlight.finish.FinishEngine;
import quarterlight.finish.JointHistory;
import quarterlight.units.ThicknessText;

/**
 * Two cars side by side, place by place. Zones of unlike bodies that correspond are laid together, others stand alone. Immutable.
 *
 * @param zones every zone of either car, in the order of the zone table
 * @param counted outer panels that were measured on both: those that the counts are over, by their zones on A
 * @param notComparable outer panels of either car that were not measured on both, or that the other does not have
 * @param refinished how many of those counted are not factory finish; empty if a gauge check failed
 * @param repaired how many are refinished over filler; empty if a gauge check failed
 * @param trials functions tried on either
 * @param remarks what keeps something from being compared, in sentences
 */
public record Comparison(
        CarSummary a,
        CarSummary b,
        List<ComparedZone> zones,
        List<ZoneId> counted,
        int notComparable,
        Optional<CountComparison> refinished,
        Optional<CountComparison> repaired,
        List<ComparedTrial> trials,
        List<String> remarks) {
    public Comparison {
        Objects.requireNonNull(a, "a");
        Objects.requireNonNull(b, "b");
        Objects.requireNonNull(refinished, "refinished");
        Objects.requireNonNull(repaired, "repaired");
        zones = List.copyOf(zones);
        counted = List.copyOf(counted);
        trials = List.copyOf(trials);
        remarks = List.copyOf(remarks);
    }

    /** What two cars are compared by. */
    public record Terms(CoverageRules rules, List<Counterpart> counterparts, Letters letters, ThicknessText unit) {
        public Terms {
            Objects.requireNonNull(rules, "rules");
            Objects.requireNonNull(letters, "letters");
            Objects.requireNonNull(unit, "unit");
            counterparts = List.copyOf(counterparts);
        }
    }

    /** Compares two cars by all that was worked out of their visits. */
    public static Comparison of(Findings a, Findings b, Terms terms) {
        return new Laying(a, b, terms).comparison();
    }

    /** The zones that both cars have, those of unlike bodies that correspond too. */
    public List<ComparedZone> shared() {
        return zones.stream().filter(ComparedZone::isShared).toList();
    }

    /** The zones that one car alone has. */
    public List<ComparedZone> apart() {
        return zones.stream().filter(zone -> !zone.isShared()).toList();
    }

    /** What speaks for one of the cars: the zones and sentences that do, in the order of the zone table. */
    public List<ComparedZone> speakingFor(Side side) {
        return zones.stream()
                .filter(zone -> zone.contrasts().stream()
                        .anyMatch(contrast ->
                                contrast.speaksFor().filter(side::equals).isPresent()))
                .toList();
    }

    /** Lays one car beside the other. */
    private static final class Laying {
        private final Findings a;
        private final Findings b;
        private final Terms terms;
        private final List<Gap> gapsA;
        private final List<Gap> gapsB;

        Laying(Findings a, Findings b, Terms terms) {
            this.a = a;
            this.b = b;
            this.terms = terms;
            this.gapsA = gaps(a);
            this.gapsB = gaps(b);
        }

        Comparison comparison() {
            List<ComparedZone> zones = zones();
            List<ComparedZone> measured =
                    zones.stream().filter(this::isMeasuredOnBoth).toList();
            int panels = (int) zones.stream().filter(Laying::isPanel).count();
            List<String> remarks = new ArrayList<>();
            boolean suspect = suspect(zones, remarks);
            List<ZoneId> counted = measured.stream()
                    .map(zone -> zone.zoneA().orElseThrow().id())
                    .toList();
            return new Comparison(
                    CarSummary.of(a, gapsA, without(zones(a), zones(b))),
                    CarSummary.of(b, gapsB, without(zones(b), zones(a))),
                    zones,
                    suspect ? List.of() : counted,
                    suspect ? panels : panels - counted.size(),
                    suspect ? Optional.empty() : Optional.of(counts(measured, false)),
                    suspect ? Optional.empty() : Optional.of(counts(measured, true)),
                    ComparedTrial.of(a.visit(), b.visit()),
                    remarks);
        }

        private boolean suspect(List<ComparedZone> zones, List<String> remarks) {
            for (Side side : Side.values()) {
                if (zones.stream().flatMap(zone -> zone.on(side).stream()).anyMatch(ZoneFacts::gaugeFailed)) {
                    remarks.add(say(
                            "compare.comparison.a-gauge-check-failed-on",
                            terms.letters().of(side)));
                }
            }
            return !remarks.isEmpty();
        }

        private List<ComparedZone> zones() {
            Places places = Places.of(
                    List.of(
                            a.visit().facts().car().body(),
                            b.visit().facts().car().body()),
                    a.catalog(),
                    terms.counterparts());
            List<ComparedZone> all = new ArrayList<>();
            for (Place place : places.all()) {
                int rows = Math.max(place.on(0).size(), place.on(1).size());
                for (int i = 0; i < rows; i++) {
                    all.add(zone(place, at(place.on(0), i), at(place.on(1), i)));
                }
            }
            return all;
        }

        private static Optional<Zone> at(List<Zone> zones, int i) {
            return i < zones.size() ? Optional.of(zones.get(i)) : Optional.empty();
        }

        private ComparedZone zone(Place place, Optional<Zone> zoneA, Optional<Zone> zoneB) {
            Optional<ZoneFacts> left = zoneA.map(zone -> ZoneFacts.of(a, zone.id(), gapsA));
            Optional<ZoneFacts> right = zoneB.map(zone -> ZoneFacts.of(b, zone.id(), gapsB));
            // one rail beside two: which of them a difference is about would be arbitrary
            boolean even = place.on(0).size() == place.on(1).size();
            List<Contrast> contrasts = even && left.isPresent() && right.isPresent()
                    ? ZoneContrasts.of(left.get(), right.get(), terms.letters(), terms.unit())
                    : List.of();
            return new ComparedZone(place, zoneA, zoneB, left, right, contrasts);
        }

        private static boolean isPanel(ComparedZone zone) {
            return zone.zoneA().filter(Zone::finish).isPresent()
                    || zone.zoneB().filter(Zone::finish).isPresent();
        }

        private boolean isMeasuredOnBoth(ComparedZone zone) {
            return isPanel(zone)
                    && zone.isShared()
                    && isMeasured(zone.a().get())
                    && isMeasured(zone.b().get());
        }

        private static boolean isMeasured(ZoneFacts facts) {
            return facts.history().isPresent()
                    && facts.thickness()
                            .filter(zone -> zone.readable() && zone.valueSpots() + zone.overSpots() > 0)
                            .isPresent();
        }

        private CountComparison counts(List<ComparedZone> measured, boolean repair) {
            Set<ZoneId> onA = new LinkedHashSet<>();
            Set<ZoneId> onB = new LinkedHashSet<>();
            for (ComparedZone zone : measured) {
                onA.add(zone.zoneA().orElseThrow().id());
                onB.add(zone.zoneB().orElseThrow().id());
            }
            JointHistory jointA = joint(a);
            JointHistory jointB = joint(b);
            return repair
                    ? CountComparison.of(jointA.filler(onA), jointB.filler(onB))
                    : CountComparison.of(jointA.notFactory(onA), jointB.notFactory(onB));
        }

        private List<Gap> gaps(Findings car) {
            return Coverage.gaps(car.visit(), car.catalog(), car.thickness(), car.rust(), terms.rules());
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
}
