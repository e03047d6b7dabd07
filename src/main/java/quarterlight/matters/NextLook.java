package quarterlight.matters;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quarterlight.car.ZoneId;
import quarterlight.visit.statement.Severity;

/**
 * Something to look at, try or measure next in person.
 *
 * @param what to do, in one sentence
 * @param inShort the same with two places at most, the others counted
 * @param why it would change the picture, in one sentence
 * @param zones where; none for the car as a whole
 * @param turns the gravest that it could turn up
 * @param caution for doing it, if there is one
 */
public record NextLook(
        String what, String inShort, String why, List<ZoneId> zones, Severity turns, Optional<String> caution) {
    public NextLook {
        Objects.requireNonNull(what, "what");
        Objects.requireNonNull(inShort, "inShort");
        Objects.requireNonNull(why, "why");
        Objects.requireNonNull(turns, "turns");
        Objects.requireNonNull(caution, "caution");
        zones = List.copyOf(zones);
    }
}
