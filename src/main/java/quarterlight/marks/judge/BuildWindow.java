package quarterlight.marks.judge;

import java.time.LocalDate;
import java.util.Optional;
import quarterlight.car.Car;
import quarterlight.car.PartialDate;

/**
 * When the car was built: the day, month or year claimed, else what its model year allows (July before to December of it,
 * common practice).
 *
 * @param first first day
 * @param last last day
 */
public record BuildWindow(LocalDate first, LocalDate last) {
    public BuildWindow {
        if (last.isBefore(first)) {
            throw new IllegalArgumentException("the last day " + last + " lies before the first " + first);
        }
    }

    /** The window of a car; empty if neither build date nor model year is known. */
    public static Optional<BuildWindow> of(Car car) {
        Optional<BuildWindow> claimed = car.built().map((PartialDate d) -> new BuildWindow(d.first(), d.last()));
        if (claimed.isPresent() || car.modelYear().isEmpty()) {
            return claimed;
        }
        int year = car.modelYear().getAsInt();
        return Optional.of(new BuildWindow(LocalDate.of(year - 1, 7, 1), LocalDate.of(year, 12, 31)));
    }
}
