package quarterlight.words.lexicon;

import java.util.List;

/**
 * A part of a car and where it is.
 *
 * @param zones alternatives, the first that the car has; in each the zones that are meant together, with {s} for the side, {b} for both
 *     sides, {e} and {f} for front or rear
 * @param region the part of the walk in which it is met: outer, bay, under, cabin, trunk, papers
 * @param when the region that must be at hand for the name to mean this part; empty if it always does
 */
public record PartName(String name, List<List<String>> zones, String region, String when) {
    /** No part: the phrase says something else. */
    public static final PartName NONE = new PartName("", List.of(), "", "");

    public PartName {
        zones = zones.stream().map(List::copyOf).toList();
    }

    public boolean sided() {
        return zones.stream().anyMatch(together -> together.stream().anyMatch(zone -> zone.contains("{s}")));
    }

    /** True for a name in the plural that means the parts of both sides. */
    boolean grouped() {
        return zones.stream().anyMatch(together -> together.stream().anyMatch(zone -> zone.contains("{b}")));
    }

    public boolean ended() {
        return zones.stream()
                .anyMatch(together -> together.stream().anyMatch(zone -> zone.contains("{e}") || zone.contains("{f}")));
    }
}
