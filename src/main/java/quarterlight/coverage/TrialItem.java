package quarterlight.coverage;

import java.util.Objects;
import java.util.Optional;
import quarterlight.car.ZoneId;

/**
 * A function worth trying.
 *
 * @param item as the trial is to be named
 * @param unit of its value, if it has one
 * @param zone where it is noted
 * @param onlyRunning true if the car must run for it
 * @param nature how it is answered
 * @param limit of its value, in its unit
 */
public record TrialItem(
        TrialGroup group,
        String item,
        Optional<String> unit,
        ZoneId zone,
        boolean onlyRunning,
        TrialNature nature,
        Optional<MeasureLimit> limit) {
    public TrialItem {
        Objects.requireNonNull(group, "group");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(zone, "zone");
        Objects.requireNonNull(nature, "nature");
        if (limit.isPresent() && unit.isEmpty()) {
            throw new IllegalArgumentException("a limit has a unit");
        }
        if (item.isBlank()) {
            throw new IllegalArgumentException("a function to try has a name");
        }
    }
}
