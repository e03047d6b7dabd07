package quarterlight.visit.reading;

import java.time.LocalDateTime;
import java.util.Objects;
import java.util.Optional;
import quarterlight.car.ZoneId;
import quarterlight.visit.pin.ViewPoint;

/**
 * One touch of the gauge.
 *
 * @param time local time at the visit
 * @param spot groups readings of one place within the zone
 * @param confidential whether it never leaves in anything made for the buyer
 * @param exclude the reason why it takes no part, if it was excluded
 */
public record Reading(
        ZoneId zone,
        GaugeValue value,
        Optional<LocalDateTime> time,
        Optional<String> spot,
        Optional<ViewPoint> point,
        Optional<GaugeMode> mode,
        Optional<String> exclude,
        Optional<String> note,
        boolean confidential) {
    public Reading {
        Objects.requireNonNull(zone, "zone");
        Objects.requireNonNull(value, "value");
    }

    /** A reading that everybody may see. */
    public Reading(
            ZoneId zone,
            GaugeValue value,
            Optional<LocalDateTime> time,
            Optional<String> spot,
            Optional<ViewPoint> point,
            Optional<GaugeMode> mode,
            Optional<String> exclude,
            Optional<String> note) {
        this(zone, value, time, spot, point, mode, exclude, note, false);
    }
}
