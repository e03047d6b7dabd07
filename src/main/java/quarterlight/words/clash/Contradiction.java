package quarterlight.words.clash;

import java.util.List;
import java.util.Objects;
import quarterlight.car.ZoneId;

/**
 * Two testimonies that can hardly both hold. It says which, not who is right.
 *
 * @param zones of which both speak; none for the whole car
 * @param first what was said or noted first, words before rows
 * @param why in which respect they differ, as a sentence
 */
public record Contradiction(About about, List<ZoneId> zones, Testimony first, Testimony second, String why) {
    public Contradiction {
        Objects.requireNonNull(about, "about");
        Objects.requireNonNull(first, "first");
        Objects.requireNonNull(second, "second");
        Objects.requireNonNull(why, "why");
        zones = List.copyOf(zones);
    }
}
