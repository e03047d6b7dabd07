package quarterlight.words;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import quarterlight.car.ZoneId;

/**
 * A row of evidence worked out from words. It is no evidence before someone has confirmed it.
 *
 * @param id the same for the same words of the same file
 * @param source the file of the words
 * @param zones every zone meant; none means the whole car
 * @param facets what it says; numbers with a decimal point
 * @param words the clause from which it follows, as it was written
 * @param p how likely it is right in kind, place and value, from 0 to 1
 * @param because the words and rules it came from, the heaviest first
 * @param features the names under which its probability was weighed, for learning
 * @param withdrawn true if later words take it back
 */
public record Draft(
        String id,
        String source,
        double atSeconds,
        double untilSeconds,
        DraftKind what,
        List<ZoneId> zones,
        Map<Facet, String> facets,
        String words,
        double p,
        List<String> because,
        List<String> features,
        boolean withdrawn) {
    public Draft {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(what, "what");
        Objects.requireNonNull(words, "words");
        zones = List.copyOf(zones);
        facets = Map.copyOf(facets);
        because = List.copyOf(because);
        features = List.copyOf(features);
        if (!(p >= 0 && p <= 1)) {
            throw new IllegalArgumentException("a probability lies between 0 and 1");
        }
    }

    public Optional<String> facet(Facet facet) {
        return Optional.ofNullable(facets.get(facet));
    }
}
