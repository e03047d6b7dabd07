package quarterlight.car;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import quarterlight.car.body.Body;
import quarterlight.car.body.Dimensions;
import quarterlight.car.body.DriveSide;

/**
 * The car of a visit.
 *
 * @param name what the inspector calls it
 * @param modelYear model year, if known
 * @param built claimed build date, if known
 * @param substrate what its zones are made of unless {@code substrates} says otherwise
 */
public record Car(
        String name,
        Body body,
        DriveSide drive,
        FinishProfile finish,
        OptionalInt modelYear,
        Optional<PartialDate> built,
        Substrate substrate,
        Map<ZoneId, Substrate> substrates,
        Dimensions dimensions) {
    public Car {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a car needs a name");
        }
        Objects.requireNonNull(body, "body");
        Objects.requireNonNull(drive, "drive");
        Objects.requireNonNull(finish, "finish");
        Objects.requireNonNull(modelYear, "modelYear");
        Objects.requireNonNull(built, "built");
        Objects.requireNonNull(substrate, "substrate");
        Objects.requireNonNull(dimensions, "dimensions");
        substrates = Map.copyOf(substrates);
    }

    public Substrate substrateOf(ZoneId zone) {
        return substrates.getOrDefault(zone, substrate);
    }
}
