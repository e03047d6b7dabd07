package quarterlight.compare.matter;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import quarterlight.compare.place.Place;

/**
 * What one row of the table is about, the same for every car.
 *
 * @param places where; none for the car as a whole
 * @param about the part, the function tried, or what is claimed
 */
public record Subject(Topic topic, List<Place> places, Optional<String> about) {
    public Subject {
        Objects.requireNonNull(topic, "topic");
        Objects.requireNonNull(about, "about");
        places = List.copyOf(places);
    }

    /** Equal for what belongs in one row: names count as equal whatever their case and blanks. */
    record Key(Topic topic, List<Place> places, String about) {}

    Key key() {
        return new Key(topic, places, about.map(Subject::plain).orElse(""));
    }

    /** A name without what does not tell it from others: case, blanks and signs. */
    static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
    }
}
