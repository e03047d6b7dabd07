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
 * @param choices what the inspector chose for the work and the pages
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
        Thickness gaugeRange,
        VisitChoices choices) {
    public static final Thickness USUAL_GAUGE_RANGE = new Thickness(2000);

    public VisitFacts {
        Objects.requireNonNull(car, "car");
        Objects.requireNonNull(timezone, "timezone");
        Objects.requireNonNull(gaugeRange, "gaugeRange");
        Objects.requireNonNull(choices, "choices");
    }

    /** The same facts with other choices. */
    public VisitFacts with(VisitChoices other) {
        return new VisitFacts(
                car,
                timezone,
                inspector,
                client,
                date,
                place,
                odometer,
                light,
                lifted,
                takenApart,
                claimed,
                gaugeRange,
                other);
    }
}
