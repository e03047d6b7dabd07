package quarterlight.finish;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import quarterlight.car.FinishProfile;
import quarterlight.car.ZoneId;
import quarterlight.units.Thickness;

/**
 * How likely each history of each panel's finish is, and what was likely done to the car as a whole. An aid, not proof.
 * <p>Method and numbers: docs/methods/finish-history.md. Immutable.
 *
 * @param model the numbers it rests on
 * @param carLevel posterior mean of the car's factory level
 * @param carLevelSd posterior standard deviation of it
 * @param scenarios probability of each scenario; sum 1
 * @param zones every outer panel, in the order given
 */
public record FinishHistory(
        FinishModel model,
        FinishProfile profile,
        Thickness carLevel,
        Thickness carLevelSd,
        Map<Scenario, Double> scenarios,
        List<ZoneHistory> zones) {
    public FinishHistory {
        Objects.requireNonNull(model, "model");
        Objects.requireNonNull(profile, "profile");
        scenarios = Map.copyOf(new EnumMap<>(scenarios));
        zones = List.copyOf(zones);
    }

    /** The finish history by the usual numbers on the usual grid. For several questions keep a {@link FinishEngine}. */
    public static FinishHistory of(FinishEvidence evidence) {
        return new FinishEngine(evidence.profile()).history(evidence);
    }

    public Optional<ZoneHistory> zone(ZoneId id) {
        return zones.stream().filter(zone -> zone.zone().equals(id)).findFirst();
    }
}
