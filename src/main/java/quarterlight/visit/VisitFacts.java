package quarterlight.visit;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Objects;
import java.util.Optional;
import quarterlight.car.Car;
import quarterlight.units.Thickness;

/**
 * The facts of the visit and its car.
 *
 * @param timezone the zone of the place of the visit
 * @param light what light there was
 * @param lifted how the car was raised, or that it was not
 * @param takenApart what was taken off
 * @param claimed what the seller claimed
 * @param gaugeRange the gauge's range
 */
public record VisitFacts(
        Car car,
        ZoneId timezone,
        Optional<String> inspector,
        Optional<String> client,
        Optional<LocalDate> date,
        Optional<String> place,
        Optional<String> odometer,
        Optional<String> light,
        Optional<String> lifted,
        Optional<String> takenApart,
        Optional<String> claimed,
        Thickness gaugeRange) {
    public static final Thickness USUAL_GAUGE_RANGE = new Thickness(2000);

    public VisitFacts {
        Objects.requireNonNull(car, "car");
        Objects.requireNonNull(timezone, "timezone");
        Objects.requireNonNull(gaugeRange, "gaugeRange");
    }
}
