package quarterlight.walk.said;

import java.util.List;
import quarterlight.car.ZoneId;

/**
 * A place that was spoken of while the car was walked round.
 *
 * @param seconds when, from the same moment from which photos count
 * @param zones those that may be meant; never none
 * @param weight how much it counts against a place named in the clause itself, above 0 to 1
 */
public record PlaceSaid(double seconds, List<ZoneId> zones, double weight) {
    public PlaceSaid {
        zones = List.copyOf(zones);
        if (!Double.isFinite(seconds) || zones.isEmpty() || !(weight > 0 && weight <= 1)) {
            throw new IllegalArgumentException("a place that was said has a time, zones and a weight of at most 1");
        }
    }
}
