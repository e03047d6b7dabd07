package quarterlight.thickness.gauge;

import java.util.Set;
import quarterlight.car.Substrate;
import quarterlight.visit.reading.GaugeMode;

/**
 * Which substrates a gauge can read through a coating: by magnetic induction steel, by eddy current other metal; none but
 * metal. Common to ISO 2178 (magnetic) and ISO 2360 (eddy current), whose scopes say so.
 */
public final class GaugeReach {
    private GaugeReach() {}

    /**
     * @param modes the modes the gauge is known to have worked in; empty if none was noted, which is taken as a gauge
     *     that reads both
     */
    public static boolean reads(Substrate substrate, Set<GaugeMode> modes) {
        return switch (substrate) {
            case STEEL -> modes.isEmpty() || modes.contains(GaugeMode.MAGNETIC);
            case ALUMINUM -> modes.isEmpty() || modes.contains(GaugeMode.EDDY);
            case FIBERGLASS, PLASTIC, WOOD -> false;
        };
    }
}
