package quarterlight.diagram.ink;

import java.util.Objects;
import quarterlight.car.ZoneId;

/**
 * The letter of a matter at one of its zones, in a small square so that nobody takes it for a pin.
 *
 * @param letter as in the list of matters
 * @param grave whether its square is filled with the grave color
 */
public record LetterMark(String letter, ZoneId zone, boolean grave) {
    public LetterMark {
        Objects.requireNonNull(letter, "letter");
        Objects.requireNonNull(zone, "zone");
    }
}
