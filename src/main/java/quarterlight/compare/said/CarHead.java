package quarterlight.compare.said;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quarterlight.visit.photo.PhotoId;

/**
 * One car at the head of a comparison.
 *
 * @param letter A, B, ...
 * @param facts body, build date, date of the visit, inspector, in one line
 * @param safety what can hurt someone, the most urgent first; none if nothing was found
 * @param cautions what to do and not to do for it
 * @param unseen what could not be looked at
 * @param checked how much was looked at, of the total
 * @param picture a photo of the car
 */
public record CarHead(
        String letter,
        String name,
        String facts,
        String paragraph,
        List<String> safety,
        List<String> cautions,
        List<String> unseen,
        String checked,
        Optional<PhotoId> picture) {
    public CarHead {
        Objects.requireNonNull(letter, "letter");
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(facts, "facts");
        Objects.requireNonNull(paragraph, "paragraph");
        Objects.requireNonNull(checked, "checked");
        Objects.requireNonNull(picture, "picture");
        safety = List.copyOf(safety);
        cautions = List.copyOf(cautions);
        unseen = List.copyOf(unseen);
    }
}
