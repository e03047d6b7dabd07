package quarterlight.finish.place;

import java.util.Map;
import quarterlight.car.ZoneId;
import quarterlight.units.Area;

/**
 * How large the zones of a car are by its body diagram. Immutable.
 *
 * @param areas nominal areas, of the zones that have one
 * @param outlines of the zones whose area rests on their outline in a view
 */
public record ZoneSizes(Map<ZoneId, Area> areas, Map<ZoneId, PanelOutline> outlines) {
    /** Nothing is known: no percent of rust, no hidden patch. */
    public static final ZoneSizes NONE = new ZoneSizes(Map.of(), Map.of());

    public ZoneSizes {
        areas = Map.copyOf(areas);
        outlines = Map.copyOf(outlines);
    }
}
