package quarterlight.visit;

import java.time.ZoneId;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import quarterlight.car.Car;
import quarterlight.car.FinishProfile;
import quarterlight.car.Substrate;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.Dimensions;
import quarterlight.car.body.DriveSide;

/** Cars of which next to nothing is known, for tests. */
public final class TestCars {
    private TestCars() {}

    /** Of steel, left-hand drive, an unknown finish. */
    public static Car of(String name, BodyStyle style) {
        return new Car(
                name,
                Body.usual(style),
                DriveSide.LEFT,
                FinishProfile.UNKNOWN,
                OptionalInt.empty(),
                Optional.empty(),
                Substrate.STEEL,
                Map.of(),
                Dimensions.NOT_GIVEN);
    }

    /** The facts of a visit to a coupe, the least that a visit can be made of. */
    public static VisitFacts coupe(ZoneId timezone) {
        return VisitParts.facts(of("Tamarisk", BodyStyle.COUPE), timezone);
    }
}
