package quarterlight.compare.place;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import quarterlight.car.ZoneId;
import quarterlight.language.Sentences;

/**
 * Zones of unlike bodies that are laid side by side.
 *
 * @param label what the place is called where the zones differ
 * @param choices what it can be on a car, the likeliest first: one zone, or several that are it together; two at least
 * @param why why they correspond and how far, in a sentence
 */
public record Counterpart(String label, List<List<ZoneId>> choices, String why) {
    public Counterpart {
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(why, "why");
        choices = choices.stream().map(List::copyOf).toList();
        if (choices.size() < 2 || choices.stream().anyMatch(List::isEmpty)) {
            throw new IllegalArgumentException(label + " corresponds to nothing");
        }
    }

    /** What the place is called, in the language in hand. */
    public String name() {
        return Sentences.sayOr("alike.place." + key(), label);
    }

    /** Why its zones correspond, in the language in hand. */
    public String said() {
        return Sentences.sayOr("alike.why." + key(), why);
    }

    private String key() {
        return label.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    }

    /** What it is on a car: the first choice of which the car has every zone. */
    Optional<List<ZoneId>> on(Set<ZoneId> car) {
        return choices.stream().filter(car::containsAll).findFirst();
    }
}
