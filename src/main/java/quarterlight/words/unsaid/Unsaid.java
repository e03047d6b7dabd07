package quarterlight.words.unsaid;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import quarterlight.car.ZoneGroup;
import quarterlight.car.ZoneId;
import quarterlight.units.Worded;
import quarterlight.words.Utterance;

/**
 * Something of which the words of a walk say nothing, though it would be expected. It is a hint to look or to say, and no finding: what was not said may
 * have been looked at all the same.
 *
 * @param zones of which nothing was said; none if the words name only a part of the walk
 * @param group the group of the zones, where several of one are gathered
 * @param wholeGroup true if no zone of the group was spoken of
 * @param heard the words that raise the expectation: the promise, or what was said of the other side
 */
public record Unsaid(
        Kind kind, List<ZoneId> zones, Optional<ZoneGroup> group, boolean wholeGroup, Optional<Utterance> heard) {
    /** Why something is expected. */
    public enum Kind implements Worded {
        /** The speaker meant to come back to it. */
        PROMISE,
        /** Only one of a pair was spoken of. */
        OTHER_SIDE,
        /** It belongs to the car. */
        NEVER_SPOKEN_OF
    }

    public Unsaid {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(group, "group");
        Objects.requireNonNull(heard, "heard");
        zones = List.copyOf(zones);
    }

    /** The same of some of its zones alone; empty if it has none of them. */
    public Optional<Unsaid> only(Set<ZoneId> some) {
        List<ZoneId> left = zones.stream().filter(some::contains).toList();
        return left.isEmpty()
                ? Optional.empty()
                : Optional.of(new Unsaid(kind, left, group, wholeGroup && left.size() == zones.size(), heard));
    }
}
