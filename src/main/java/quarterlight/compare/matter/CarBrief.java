package quarterlight.compare.matter;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quarterlight.car.ZoneId;

/**
 * What the first page of a car says, as the comparison repeats it.
 *
 * @param paragraph the car in a few sentences
 * @param safety what can hurt someone before anything is repaired, the most urgent first
 * @param cautions what to do and not to do for it
 * @param unseen what could not be looked at
 * @param checked how much was looked at, of the total
 * @param next what to look at in person, what would change most first
 */
public record CarBrief(
        String paragraph,
        List<String> safety,
        List<String> cautions,
        List<String> unseen,
        String checked,
        List<Look> next) {
    public CarBrief {
        Objects.requireNonNull(paragraph, "paragraph");
        Objects.requireNonNull(checked, "checked");
        safety = List.copyOf(safety);
        cautions = List.copyOf(cautions);
        unseen = List.copyOf(unseen);
        next = List.copyOf(next);
    }

    /**
     * Something to look at, try or measure.
     *
     * @param grave whether it could turn up something grave
     * @param caution for doing it, if there is one
     */
    public record Look(String what, String why, List<ZoneId> zones, boolean grave, Optional<String> caution) {
        public Look {
            Objects.requireNonNull(what, "what");
            Objects.requireNonNull(why, "why");
            Objects.requireNonNull(caution, "caution");
            zones = List.copyOf(zones);
        }
    }
}
