package quarterlight.words.place;

import java.util.List;
import java.util.Objects;
import quarterlight.car.ZoneId;
import quarterlight.words.lexicon.PartName;

/**
 * Where something is, as far as the words tell.
 *
 * @param part the part spoken of; {@link PartName#NONE} for the car as a whole
 * @param zones the zones meant; none for the whole car
 * @param how from where the part is known
 * @param sideHow from where its side is known
 * @param said the words that name it
 */
public record Place(PartName part, SpokenSide side, End end, List<ZoneId> zones, How how, How sideHow, String said) {
    public static final Place NOWHERE =
            new Place(PartName.NONE, SpokenSide.LEFT, End.FRONT, List.of(), How.UNKNOWN, How.UNKNOWN, "");

    public Place {
        Objects.requireNonNull(part, "part");
        zones = List.copyOf(zones);
    }

    public boolean known() {
        return !zones.isEmpty();
    }

    Place carried() {
        return new Place(part, side, end, zones, How.CARRIED, sideHow == How.CENTRAL ? How.CENTRAL : How.CARRIED, said);
    }
}
