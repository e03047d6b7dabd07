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
public record SpokenPlace(
        PartName part,
        SpokenSide side,
        End end,
        List<ZoneId> zones,
        PlaceSource how,
        PlaceSource sideHow,
        String said) {
    public static final SpokenPlace NOWHERE = new SpokenPlace(
            PartName.NONE, SpokenSide.LEFT, End.FRONT, List.of(), PlaceSource.UNKNOWN, PlaceSource.UNKNOWN, "");

    public SpokenPlace {
        Objects.requireNonNull(part, "part");
        zones = List.copyOf(zones);
    }

    public boolean known() {
        return !zones.isEmpty();
    }

    SpokenPlace carried() {
        return new SpokenPlace(
                part,
                side,
                end,
                zones,
                PlaceSource.CARRIED,
                sideHow == PlaceSource.CENTRAL ? PlaceSource.CENTRAL : PlaceSource.CARRIED,
                said);
    }
}
