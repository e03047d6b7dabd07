package quarterlight.finish;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import quarterlight.car.FinishProfile;
import quarterlight.car.ZoneId;
import quarterlight.finish.history.Scenario;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.units.Thickness;

/**
 * How likely each history of each panel's finish is, and what was likely done to the car as a whole. An aid, not proof.
 * <p>Method and numbers: docs/methods/finish-history.md. Immutable.
 *
 * @param carLevel posterior mean of the car's factory level
 * @param carLevelSd posterior standard deviation of it
 * @param scenarios probability of each scenario; sum 1
 * @param zones outer panels with a reading or a sign of their own, in the order given
 * @param priors the others: nothing is said for or against the car by them
 * @param remarks full sentences on readings that no history explains well
 */
public record FinishHistory(
        FinishProfile profile,
        Thickness carLevel,
        Thickness carLevelSd,
        Map<Scenario, Double> scenarios,
        List<ZoneHistory> zones,
        List<ZonePrior> priors,
        List<String> remarks) {
    /** Version of the model: a changed number is a new one. */
    public static final String VERSION = "2";

    /**
     * What could be expected of a panel of which nothing is known.
     *
     * @param notFactory chance that it is not factory finish, from the rest of the car
     * @param filler chance of filler
     */
    public record ZonePrior(ZoneId zone, boolean readable, double notFactory, double filler) {
        public ZonePrior {
            Objects.requireNonNull(zone, "zone");
        }
    }

    public FinishHistory {
        Objects.requireNonNull(profile, "profile");
        scenarios = Map.copyOf(new EnumMap<>(scenarios));
        zones = List.copyOf(zones);
        priors = List.copyOf(priors);
        remarks = List.copyOf(remarks);
    }

    public static FinishHistory of(FinishEvidence evidence) {
        return new FinishEngine(evidence.profile()).history(evidence);
    }

    /** Empty for a zone of which nothing of its own is known. */
    public Optional<ZoneHistory> zone(ZoneId id) {
        return zones.stream().filter(zone -> zone.zone().equals(id)).findFirst();
    }

    public Optional<ZonePrior> prior(ZoneId id) {
        return priors.stream().filter(zone -> zone.zone().equals(id)).findFirst();
    }
}
