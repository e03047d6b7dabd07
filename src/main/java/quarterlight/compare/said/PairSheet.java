package quarterlight.compare.said;

import java.util.List;
import java.util.Objects;
import quarterlight.compare.Comparison;
import quarterlight.compare.Letters;

/**
 * Two of the cars in detail, in words.
 *
 * @param nameA what the first of them is called
 * @param places every place that both have, those of grave and major matters first, in their order
 * @param apart places that one of them lacks, in the same order
 * @param levels the level of each car, in a sentence
 * @param counts refinished and repaired panels; none if they cannot be compared
 * @param compared how many panels the counts are over, and how many are not comparable
 * @param trials functions tried on either
 */
public record PairSheet(
        Comparison comparison,
        Letters letters,
        String nameA,
        String nameB,
        List<PlaceText> places,
        List<PlaceText> apart,
        List<String> levels,
        List<CountText> counts,
        String compared,
        List<TrialText> trials) {
    public PairSheet {
        Objects.requireNonNull(comparison, "comparison");
        Objects.requireNonNull(letters, "letters");
        Objects.requireNonNull(nameA, "nameA");
        Objects.requireNonNull(nameB, "nameB");
        Objects.requireNonNull(compared, "compared");
        places = List.copyOf(places);
        apart = List.copyOf(apart);
        levels = List.copyOf(levels);
        counts = List.copyOf(counts);
        trials = List.copyOf(trials);
    }

    /** One function on both. */
    public record TrialText(String item, String a, String b) {}

    /** Places that both have and of which more than photos is known on either. */
    public List<PlaceText> evident() {
        return places.stream().filter(PlaceText::isEvident).toList();
    }

    /** Places that one of them lacks and of which more than photos is known. */
    public List<PlaceText> evidentApart() {
        return apart.stream().filter(PlaceText::isEvident).toList();
    }

    /** Outer panels measured on one of the cars, laid together or apart. */
    public List<PlaceText> measured() {
        return java.util.stream.Stream.concat(places.stream(), apart.stream())
                .filter(PlaceText::isMeasured)
                .toList();
    }
}
