package quarterlight.compare.matter;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quarterlight.car.ZoneId;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.statement.Severity;

/**
 * Something that matters on one car, as the comparison reads it.
 *
 * @param safety whether nobody is to drive or lift the car before it is settled
 * @param zones where; none for the car as a whole
 * @param about the part, the function tried, or what is claimed
 * @param place where, in words
 * @param text what it is, in a sentence
 * @param looked false if it matters because nobody looked
 */
public record FoundMatter(
        Severity severity,
        boolean safety,
        Topic topic,
        Concern concern,
        List<ZoneId> zones,
        Optional<String> about,
        String place,
        String text,
        Optional<PhotoId> photo,
        boolean looked) {
    public FoundMatter {
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(topic, "topic");
        Objects.requireNonNull(concern, "concern");
        Objects.requireNonNull(about, "about");
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(photo, "photo");
        zones = List.copyOf(zones);
        if (text.isBlank()) {
            throw new IllegalArgumentException("a matter says what it is");
        }
    }
}
