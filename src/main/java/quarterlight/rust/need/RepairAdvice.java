package quarterlight.rust.need;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What a zone needs, why, and what to beware of.
 *
 * @param need empty if the zone was not looked at and nothing speaks for a repair
 * @param reasons sentences in the order of their weight
 * @param cautions sentences to be shown with it
 */
public record RepairAdvice(Optional<RepairNeed> need, List<String> reasons, List<String> cautions) {
    public RepairAdvice {
        Objects.requireNonNull(need, "need");
        reasons = List.copyOf(reasons);
        cautions = List.copyOf(cautions);
    }
}
