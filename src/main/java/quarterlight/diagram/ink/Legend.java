package quarterlight.diagram.ink;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The key to a diagram: unit, range and ramp, and what the densities mean.
 *
 * @param scale the range of the ramp; empty if no zone has a value
 * @param ticks the values to write along the ramp as shown, evenly spaced from low to high; two or more where there is a scale
 * @param hatchTitle what the hatching means; empty for no key
 * @param hatches words for densities 1 to 4
 * @param stippleTitle what the stipple means; empty for no key
 * @param stipples words for densities 1 to 5
 */
public record Legend(
        Optional<ValueScale> scale,
        List<String> ticks,
        String hatchTitle,
        List<String> hatches,
        String stippleTitle,
        List<String> stipples) {
    public Legend {
        Objects.requireNonNull(scale, "scale");
        Objects.requireNonNull(hatchTitle, "hatchTitle");
        Objects.requireNonNull(stippleTitle, "stippleTitle");
        ticks = List.copyOf(ticks);
        hatches = List.copyOf(hatches);
        stipples = List.copyOf(stipples);
        if (scale.isPresent() && ticks.size() < 2) {
            throw new IllegalArgumentException("a ramp needs its two ends written");
        }
        if (hatches.size() > ZoneLook.MAX_HATCH || stipples.size() > ZoneLook.MAX_STIPPLE) {
            throw new IllegalArgumentException("more words than densities");
        }
    }
}
