package quarterlight.diagram.ink;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import quarterlight.car.ZoneId;

/**
 * What is to be seen on the diagram of one car.
 *
 * @param looks how each zone looks; a zone not named has no value
 * @param labels words to write at zones that have no number, for instance their names; may be empty
 * @param names names of zones for readers, for titles and the selected zone
 * @param pins numbered pins
 * @param letters of matters at their zones
 * @param legend what colors and densities mean; empty for a bare drawing
 */
public record DiagramInk(
        Map<ZoneId, ZoneLook> looks,
        Map<ZoneId, String> labels,
        Map<ZoneId, String> names,
        List<PinMark> pins,
        List<LetterMark> letters,
        Optional<Legend> legend) {
    /** The drawing alone. */
    public static final DiagramInk BARE = new DiagramInk(Map.of(), Map.of(), Map.of(), List.of(), Optional.empty());

    public DiagramInk {
        looks = Map.copyOf(looks);
        labels = Map.copyOf(labels);
        names = Map.copyOf(names);
        pins = List.copyOf(pins);
        letters = List.copyOf(letters);
        Objects.requireNonNull(legend, "legend");
    }

    /** One without letters. */
    public DiagramInk(
            Map<ZoneId, ZoneLook> looks,
            Map<ZoneId, String> labels,
            Map<ZoneId, String> names,
            List<PinMark> pins,
            Optional<Legend> legend) {
        this(looks, labels, names, pins, List.of(), legend);
    }

    /** How a zone looks; of one not named, that nothing is known. */
    public ZoneLook lookOf(ZoneId zone) {
        return looks.getOrDefault(zone, ZoneLook.NONE);
    }

    /** Whether a zone shows words and no number of its own. */
    public boolean isNamed(ZoneId zone) {
        return lookOf(zone).number().isEmpty() && !labels.getOrDefault(zone, "").isEmpty();
    }

    /** The text to write at a zone; empty for none. */
    public String textOf(ZoneId zone) {
        String number = lookOf(zone).number();
        return number.isEmpty() ? labels.getOrDefault(zone, "") : number;
    }
}
